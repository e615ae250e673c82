using System.Reflection;
using System.Runtime.CompilerServices;
using System.Runtime.Loader;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Hydrocolloid.Formulation.Tests;

public partial class ConventionTests
{
    private static readonly Assembly s_library = typeof(Formula).Assembly;

    private static readonly Type[] s_public = s_library.GetExportedTypes();

    private static readonly Dictionary<string, XElement> s_docs = XDocument.Load(Path.ChangeExtension(s_library.Location, ".xml"))
        .Descendants("member").ToDictionary(m => m.Attribute("name")!.Value, StringComparer.Ordinal);

    /// <summary>Numbers whose unit is that of what they describe; the docs of the type say so.</summary>
    private static readonly string[] s_unitFromContext =
    [
        "P:Hydrocolloid.Formulation.FormulaProblem.Value", "P:Hydrocolloid.Formulation.FormulaProblem.Limit",
        "P:Hydrocolloid.Formulation.NumberRange.Min", "P:Hydrocolloid.Formulation.NumberRange.Max",
        "M:Hydrocolloid.Formulation.NumberRange.#ctor(System.Nullable{System.Double},System.Nullable{System.Double})",
        "M:Hydrocolloid.Formulation.NumberRange.Single(System.Double)",
    ];

    [Fact]
    public void Public_classes_are_sealed_or_static()
        => s_public.Where(t => t.IsClass && !t.IsSealed).Should().BeEmpty();

    [Fact]
    public void No_public_type_bears_a_part_of_the_namespaces_name()
        => s_public.Select(t => t.Name).Should().NotContain(["Hydrocolloid", "Formulation"]);

    [Fact]
    public void Public_structs_are_readonly()
        // The netstandard2.0 build carries an attribute type of its own, so the name decides.
        => s_public.Where(t => t.IsValueType && !t.IsEnum && t.GetCustomAttributesData().All(a => a.AttributeType.Name != nameof(IsReadOnlyAttribute))).Should().BeEmpty();

    [Fact]
    public void Every_public_type_and_member_has_a_summary()
        => PublicIds().Where(id => !HasSummary(id)).Should().BeEmpty();

    [Fact]
    public void Every_public_number_names_its_unit()
    {
        var nameless = new List<string>();
        foreach (Type type in s_public)
        {
            string? ofType = Text(type.IsEnum ? null : "T:" + type.FullName);
            foreach (PropertyInfo property in type.GetProperties(Declared).Where(p => IsNumber(p.PropertyType)))
            {
                Check(nameless, $"P:{type.FullName}.{property.Name}", property.Name, Text($"P:{type.FullName}.{property.Name}") ?? ofType);
            }

            foreach (MethodBase method in type.GetMethods(Declared).Cast<MethodBase>().Concat(type.GetConstructors(Declared)).Where(m => !m.IsSpecialName || m.IsConstructor))
            {
                foreach (ParameterInfo parameter in method.GetParameters().Where(p => IsNumber(p.ParameterType)))
                {
                    string id = IdOf(method);
                    Check(nameless, id, parameter.Name!, s_docs.GetValueOrDefault(id)?.Elements("param").FirstOrDefault(p => p.Attribute("name")!.Value == parameter.Name)?.ToString()
                        + parameter.Name);
                }
            }
        }

        string.Join("; ", nameless).Should().BeEmpty();
    }

    [Fact]
    public void Static_initialisers_of_every_type_run_alone()
    {
        foreach (Type type in s_library.GetTypes().Where(t => t.TypeInitializer is not null && !t.ContainsGenericParameters))
        {
            // Each in a fresh copy of the library, so that no other type was initialised before it.
            var context = new AssemblyLoadContext(type.FullName, isCollectible: true);
            Type fresh = context.LoadFromAssemblyPath(s_library.Location).GetType(type.FullName!, throwOnError: true)!;
            FluentActions.Invoking(() => RuntimeHelpers.RunClassConstructor(fresh.TypeHandle)).Should().NotThrow(type.FullName);
            foreach (FieldInfo field in fresh.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic)
                .Where(f => !f.FieldType.IsValueType && !f.Name.Contains("__", StringComparison.Ordinal) && !f.Name.Contains('<', StringComparison.Ordinal)))
            {
                field.GetValue(null).Should().NotBeNull($"{type.FullName}.{field.Name}");
            }

            context.Unload();
        }
    }

    private const BindingFlags Declared = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static bool IsNumber(Type type) => type == typeof(double) || type == typeof(double?);

    private static void Check(List<string> nameless, string id, string name, string? docs)
    {
        if (!s_unitFromContext.Contains(id) && !UnitWords().IsMatch(docs ?? "") && !name.EndsWith("Percent", StringComparison.OrdinalIgnoreCase))
        {
            nameless.Add($"{id} ({name})");
        }
    }

    [GeneratedRegex(@"%|°|\bm?mol/kg\b|\bmg/kg\b|\bmmol/L\b|\bg/L\b|\bpH\b|\bin g\b|\bg per 100 g\b|\bmg per 100 g\b|kg/m³|g/cm²|\bper unit of base\b|percentage|\bUnit\b|\bunit\b|\bmL\b|\bmm\b|\bm\b|W/|J/|\bh\b|\bmin\b|(?<!['’])\bs\b")]
    private static partial Regex UnitWords();

    private static IEnumerable<string> PublicIds()
    {
        foreach (Type type in s_public)
        {
            yield return "T:" + type.FullName;
            foreach (PropertyInfo property in type.GetProperties(Declared).Where(p => p.GetIndexParameters().Length == 0))
            {
                yield return $"P:{type.FullName}.{property.Name}";
            }

            foreach (FieldInfo field in type.GetFields(Declared).Where(f => !f.IsSpecialName))
            {
                yield return $"F:{type.FullName}.{field.Name}";
            }

            foreach (MethodInfo method in type.GetMethods(Declared).Where(m => !m.IsSpecialName && !m.IsDefined(typeof(CompilerGeneratedAttribute), false)))
            {
                yield return IdOf(method);
            }
        }
    }

    /// <summary>The documentation id up to its parameter list where generics make that hard to write; then any overload answers.</summary>
    private static string IdOf(MethodBase method)
    {
        string name = $"M:{method.DeclaringType!.FullName}.{(method.IsConstructor ? "#ctor" : method.Name)}";
        string parameters = string.Join(",", method.GetParameters().Select(p => NameOf(p.ParameterType)));
        string id = parameters.Length == 0 ? name : $"{name}({parameters})";
        return s_docs.ContainsKey(id) ? id
            : s_docs.Keys.FirstOrDefault(k => (k == name || k.StartsWith(name + "(", StringComparison.Ordinal) || k.StartsWith(name + "``", StringComparison.Ordinal))
                && s_docs[k].Elements("param").Select(p => p.Attribute("name")!.Value).SequenceEqual(method.GetParameters().Select(p => p.Name))) ?? id;
    }

    private static string NameOf(Type type)
    {
        if (type.IsByRef)
        {
            return NameOf(type.GetElementType()!) + "@";
        }

        return !type.IsGenericType ? type.FullName ?? type.Name
            : type.GetGenericTypeDefinition().FullName!.Split('`')[0] + "{" + string.Join(",", type.GetGenericArguments().Select(NameOf)) + "}";
    }

    private static bool HasSummary(string id)
        => s_docs.TryGetValue(id, out XElement? docs)
            && (docs.Element("inheritdoc") is not null || !string.IsNullOrWhiteSpace(docs.Element("summary")?.Value) || docs.Element("summary")?.HasElements == true)
            || id.Contains(".Equals(", StringComparison.Ordinal) || id.EndsWith(".GetHashCode", StringComparison.Ordinal)
            || IsParameterOfRecord(id);

    /// <summary>A property that a record's parameter makes is documented by that parameter.</summary>
    private static bool IsParameterOfRecord(string id)
        => id.StartsWith("P:", StringComparison.Ordinal)
            && s_docs.GetValueOrDefault("T:" + id[2..id.LastIndexOf('.')])?.Elements("param").Any(p => p.Attribute("name")!.Value == id[(id.LastIndexOf('.') + 1)..]) == true;

    private static string? Text(string? id) => id is not null && s_docs.TryGetValue(id, out XElement? docs) ? docs.ToString() : null;
}
