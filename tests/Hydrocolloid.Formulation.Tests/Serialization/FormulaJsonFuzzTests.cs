using System.Text;
using Hydrocolloid.Formulation.Serialization;

namespace Hydrocolloid.Formulation.Tests.Serialization;

public class FormulaJsonFuzzTests
{
    private static readonly string[] s_pieces =
    [
        "null", "true", "-0", "1e400", "1e308", "NaN", "\"\"", "{", "}", "[", "]", ",", ":", "\"", "\\", "\\ud800", "\\u0000", "//", "/* */", "{}", "[]", "\ufeff",
        "\"ingredient\":\"agar\",", "\"unit\":\"kg\",", "\"extensions\":{},", "{\"line\":\"x\"}", "0,9", "'", "\0", "é",
    ];

    [Fact]
    public void Damaged_documents_give_a_formula_or_the_one_exception()
    {
        byte[][] valid = [.. Documents.BlocksOfThePage().Append(Documents.With()).Append(Documents.Layers).Select(Encoding.UTF8.GetBytes)];
        var random = new Random(20_260_101);
        int read = 0, refused = 0;
        for (int i = 0; i < 24_000; i++)
        {
            List<byte> bytes = [.. valid[random.Next(valid.Length)]];
            for (int changes = 1 + random.Next(3); changes > 0 && bytes.Count > 0; changes--)
            {
                int at = random.Next(bytes.Count);
                switch (random.Next(6))
                {
                    case 0: bytes[at] = (byte)random.Next(256); break;
                    case 1: bytes.RemoveRange(at, Math.Min(1 + random.Next(20), bytes.Count - at)); break;
                    case 2: bytes.InsertRange(at, Encoding.UTF8.GetBytes(s_pieces[random.Next(s_pieces.Length)])); break;
                    case 3: bytes[at] ^= (byte)(1 << random.Next(8)); break;
                    case 4: bytes.InsertRange(at, bytes.GetRange(random.Next(bytes.Count), 1)); break;
                    default: bytes.RemoveRange(at, bytes.Count - at); break;
                }
            }

            byte[] document = [.. bytes];
            try
            {
                Formula formula = FormulaJson.Read(document);
                FormulaJson.Read(FormulaJson.WriteUtf8(formula)).Should().Be(formula);
                read++;
            }
            catch (FormulaJsonException e) when (e.Problems.Count > 0 && e.Problems.All(p => p.LineNumber > 0 && p.ByteOffset <= document.Length))
            {
                e.Message.Should().NotContain("Hydrocolloid.Formulation.", Encoding.UTF8.GetString(document));
                refused++;
            }
        }

        read.Should().BePositive();
        refused.Should().BePositive();
    }
}
