package wainbook.waste;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.process.stream.Fate;
import wainbook.waste.note.Note;

/** What is said of things taken out of a vehicle, in its own stream; and of a container of waste, in the container's. */
public sealed interface WasteSaying extends Saying {

    /**
     * Taken out and weighed, though no item of a sheet asks for it.
     *
     * @param thing by which the vehicle's record calls it
     */
    @Kind("waste.removed/1")
    record Removed(String thing, String what, String code, BigDecimal massKg, Fate fate) implements WasteSaying {}

    /**
     * What becomes of it. A later one takes its place.
     *
     * @param party who gets it, a firm by its code; absent for what stays or is discarded
     * @param dueOn by when, where a day was agreed
     * @param place where it lies until then
     */
    @Kind("waste.decided/1")
    record Decided(
            String thing,
            Fate fate,
            Optional<String> party,
            Optional<LocalDate> dueOn,
            Optional<String> place,
            String why)
            implements WasteSaying {}

    /** Whether a part kept for reuse may be fitted again. */
    @Kind("waste.tested/1")
    record Tested(String thing, boolean fit, String found) implements WasteSaying {}

    /** It left the works as a part, not as waste. */
    @Kind("waste.leftAsPart/1")
    record LeftAsPart(String thing, String to, String reference) implements WasteSaying {}

    /** @param code the container's, which is its own */
    @Kind("waste.placed/1")
    record Placed(String thing, String what, String container, String code, BigDecimal massKg) implements WasteSaying {}

    /** It was never in that container: a slip of the pen, not a way to take waste out again. */
    @Kind("waste.placingVoided/1")
    record PlacingVoided(String thing, String container, String reason) implements WasteSaying {}

    /**
     * The engine was made unusable.
     *
     * @param method in words: what was cut or drilled, where, and how large
     * @param ticket the weight ticket's number, where it was weighed as scrap
     * @param permit of the site that receives it
     */
    @Kind("waste.engineMadeUnusable/1")
    record EngineMadeUnusable(
            String serial,
            String method,
            LocalDate on,
            EvidenceFile before,
            EvidenceFile after,
            Optional<String> ticket,
            Optional<String> permit)
            implements WasteSaying {}

    /** What a container's capacity is counted in. */
    enum Measure {
        KG,
        L
    }

    /** Of one of a mirror pair: who assessed which it is, a person by number or a firm by its code, and on what. */
    record Assessment(String by, String basis) {}

    /**
     * @param bund whether it stands over a bund or on an impermeable floor
     * @param lid whether it has a lid that is kept shut
     * @param askAfterDays after so many days somebody is asked about it
     */
    @Kind("waste.containerOpened/1")
    record ContainerOpened(
            String code,
            BigDecimal capacity,
            Measure measure,
            String place,
            boolean bund,
            boolean lid,
            Optional<Assessment> assessment,
            int askAfterDays)
            implements WasteSaying {}

    /** @param volumeL where it was dipped */
    @Kind("waste.putIn/1")
    record PutIn(String order, String thing, String what, BigDecimal massKg, Optional<BigDecimal> volumeL)
            implements WasteSaying {}

    @Kind("waste.putInVoided/1")
    record PutInVoided(String order, String thing, String reason) implements WasteSaying {}

    /** Full or closed: nothing more goes in. */
    @Kind("waste.containerSealed/1")
    record ContainerSealed(BigDecimal massKg) implements WasteSaying {}

    /** What of a note's mass falls on one thing, by the masses that were put in. */
    record Share(String order, String thing, String what, BigDecimal putInKg, BigDecimal shareKg) {}

    /** @param putInKg what the works counted; the note's own mass may be a weighbridge's */
    @Kind("waste.collected/1")
    record Collected(Note note, BigDecimal putInKg, List<Share> shares) implements WasteSaying {
        public Collected {
            shares = List.copyOf(shares);
        }
    }

    /** What the site that received it says became of it; the three parts make up what it accepted. */
    @Kind("waste.returnNoted/1")
    record ReturnNoted(
            LocalDate on, String reference, BigDecimal recycledKg, BigDecimal energyKg, BigDecimal disposedKg)
            implements WasteSaying {}
}
