package wainbook.handover.working;

import jakarta.inject.Singleton;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.engineering.Allowed;
import wainbook.engineering.Always;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Fault;
import wainbook.engineering.Plain;
import wainbook.engineering.Preset;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/** What a charge of refrigerant weighs in carbon dioxide, and how often its circuit is looked over for leaks. */
@Singleton
public class RefrigerantCharge implements Calculation<RefrigerantCharge.Inputs, RefrigerantCharge.Results> {

    private static final Refrigerants KNOWN = RuleData.read("refrigerants", Refrigerants.class);
    private static final int KG_A_TONNE = 1000;

    /** @param sealed whether the circuit is hermetically sealed and labelled so */
    public record Inputs(
            @Allowed(OneThatIsKnown.class) String refrigerant,
            @Domain(above = 0, to = 1000) double chargeKg,
            @Preset("false") boolean sealed) {}

    /** @param everyMonths how often it is checked; absent: not by this rule, or more often than it says */
    public record Results(double co2eTonnes, @Always Optional<Integer> everyMonths) {}

    /** The rule file. */
    record Refrigerants(
            List<Refrigerant> refrigerants, List<Check> checks, double sealedFreeBelowTonnes, List<Source> sources) {

        Optional<Refrigerant> named(String name) {
            return refrigerants.stream()
                    .filter(one -> one.name().equalsIgnoreCase(name))
                    .findFirst();
        }

        String names() {
            return refrigerants.stream().map(Refrigerant::name).collect(Collectors.joining(", "));
        }
    }

    /** @param warming potential over a hundred years, carbon dioxide being 1 */
    record Refrigerant(String name, double warming) {}

    /** How often a charge of a size is checked. */
    record Check(double fromTonnes, double belowTonnes, int everyMonths) {
        boolean holds(double tonnes) {
            return Plain.compared(tonnes) >= fromTonnes && Plain.compared(tonnes) < belowTonnes;
        }
    }

    /** One without a warming potential here is a fault that names those that have one. */
    static final class OneThatIsKnown implements Allowed.Rule {
        @Override
        public List<Fault> faults(String field, Object refrigerant) {
            return KNOWN.named((String) refrigerant).isPresent()
                    ? List.of()
                    : List.of(Fault.of(field, "oneOf", KNOWN.names()));
        }
    }

    @Override
    public String name() {
        return "refrigerant-charge";
    }

    @Override
    public List<Source> sources() {
        return KNOWN.sources();
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.certifiedForGas"), Sentence.of("handover.noAdvice"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double warming = KNOWN.named(in.refrigerant()).orElseThrow().warming();
        double tonnes = in.chargeKg() * warming / KG_A_TONNE;
        boolean free = in.sealed() && Plain.compared(tonnes) < KNOWN.sealedFreeBelowTonnes();
        Optional<Integer> months = KNOWN.checks().stream()
                .filter(check -> !free && check.holds(tonnes))
                .map(Check::everyMonths)
                .findFirst();
        return found(
                new Results(tonnes, months),
                Sentence.brief(
                        "engineering.refrigerant-charge." + word(tonnes, free, months), tonnes, months.orElse(0)),
                Step.of(
                        "co2e",
                        "charge · warming potential / 1000",
                        tonnes,
                        "t",
                        "%s · %s / %s",
                        in.chargeKg(),
                        warming,
                        (double) KG_A_TONNE));
    }

    private static String word(double tonnes, boolean free, Optional<Integer> months) {
        boolean beyond = KNOWN.checks().stream().allMatch(check -> Plain.compared(tonnes) >= check.belowTonnes());
        return months.isPresent() ? "none" : beyond && !free ? "beyond" : "free";
    }
}
