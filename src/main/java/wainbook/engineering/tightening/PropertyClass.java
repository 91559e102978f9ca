package wainbook.engineering.tightening;

import java.util.List;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Checked;
import wainbook.engineering.Domain;
import wainbook.engineering.Fault;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/** What a bolt of a property class bears: its yield strength and its proof load, proof stress × stress area (ISO 898-1). */
public final class PropertyClass implements Calculation<PropertyClass.Inputs, PropertyClass.Results> {

    public record Inputs(
            BoltClass propertyClass,
            @Domain(above = 0) double diameterMm,
            @Domain(above = 0) double pitchMm) implements Checked {

        @Override
        public List<Fault> faults() {
            double mostMm = diameterMm / IsoThread.MINOR_DEPTH;
            return pitchMm < mostMm ? List.of() : List.of(Fault.of("pitchMm", "below", mostMm));
        }
    }

    public record Results(double yieldMPa, double proofMPa, double stressAreaMm2, double proofN) {}

    @Override
    public String name() {
        return "property-class";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.memory("ISO 898-1", "yield strength and proof stress of 8.8, 10.9 and 12.9"),
                Source.seen("Two fastener suppliers’ tables of ISO 898-1", "proof loads M6 to M24, which they round"));
    }

    @Override
    public List<Sentence> cautions() {
        return Cautions.TORQUE;
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double areaMm2 = new IsoThread(in.diameterMm(), in.pitchMm()).stressAreaMm2();
        double proofMPa = in.propertyClass().proofMPa(in.diameterMm());
        double proofN = proofMPa * areaMm2;
        return found(
                new Results(in.propertyClass().yieldMPa(in.diameterMm()), proofMPa, areaMm2, proofN),
                Sentence.brief("engineering.property-class.none", in.propertyClass(), proofN),
                Step.of("proofLoad", "F_p = S_p · As", proofN, "N", "%s · %s", proofMPa, areaMm2));
    }
}
