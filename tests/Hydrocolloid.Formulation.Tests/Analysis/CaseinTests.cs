namespace Hydrocolloid.Formulation.Tests.Analysis;

public sealed class CaseinTests
{
    [Fact]
    public void Free_calcium_beside_casein_is_never_called_sound()
    {
        Formula milk = Formula.Named("milk").Base(b => b.Share(Pantry.WholeMilk, 60).Share(Pantry.Water, 40)).Build();

        Reckoned calcium = milk.Analyse().Assembled.FreeCalcium!;

        calcium.IsSound.Should().BeFalse("casein binds calcium, and the balance does not know it");
        calcium.Outside!.Quantity.Should().Be("lines with casein");
        calcium.How.Should().Be(ReckonedHow.Estimated);
        milk.Analyse().Assembled.Ph!.Outside.Should().BeNull("the pH is not judged by it");
    }
}
