package wainbook.engineering.electrical;

import java.util.List;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Plain;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/**
 * Voltage class of a circuit by ISO 6469-3: A up to 60 V DC or 30 V AC, B above that up to 1500 V DC or 1000 V AC. The ends
 * belong to the lower class.
 */
public final class VoltageClass implements Calculation<VoltageClass.Inputs, VoltageClass.Results> {

    /** Direct, or alternating as root mean square. */
    public enum Current {
        DC(60, 1500),
        AC(30, 1000);

        private final double mostOfA;
        private final double mostOfB;

        Current(double mostOfA, double mostOfB) {
            this.mostOfA = mostOfA;
            this.mostOfB = mostOfB;
        }

        Letter letter(double voltageV) {
            double compared = Plain.compared(voltageV);
            if (compared <= mostOfA) {
                return Letter.A;
            }
            return compared <= mostOfB ? Letter.B : Letter.BEYOND;
        }
    }

    /** The class, or that the voltage is beyond both. */
    public enum Letter {
        A,
        B,
        BEYOND;

        @Override
        public String toString() {
            return this == BEYOND ? "beyond" : name();
        }
    }

    public record Inputs(@Domain(from = 0) double voltageV, Current current) {}

    public record Results(Letter voltageClass, double highestOfClassAV) {}

    @Override
    public String name() {
        return "voltage-class";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.memory("ISO 6469-3:2021", "clause 4, voltage classes"),
                Source.seen("FMVSS 305, 82 FR 44945", "S3, above 60 V DC or 30 V AC is high voltage"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Origins.MAKES_NOTHING_SAFE, Origins.LOCAL_RULES);
    }

    @Override
    public Answer<Results> work(Inputs in) {
        Letter letter = in.current().letter(in.voltageV());
        return found(
                new Results(letter, in.current().mostOfA),
                Sentence.of("engineering.voltage-class." + letter, in.voltageV(), in.current()),
                Step.of(
                        "classA",
                        "U ≤ limit of class A",
                        in.current().mostOfA,
                        "V",
                        "%s V %s",
                        in.voltageV(),
                        in.current()));
    }
}
