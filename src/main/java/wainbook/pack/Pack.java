package wainbook.pack;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.pack.PackSaying.Outside;
import wainbook.pack.PackSaying.PackReceived;
import wainbook.pack.PackSaying.Quarantined;
import wainbook.pack.PackSaying.SentOff;
import wainbook.pack.PackSaying.StorageChecked;
import wainbook.pack.PackSaying.Verdict;

/** One pack as its entries leave it. */
public record Pack(
        String serial,
        Optional<Entry> receivedBy,
        Optional<Entry> checkedBy,
        Optional<Quarantine> quarantine,
        Optional<Entry> sentOffBy) {

    /** Months from one look to the next in storage. Common practice, no source. */
    public static final int CHECK_MONTHS = 3;

    /** Empty where nothing was ever said of it. */
    public static Optional<Pack> of(History history) {
        var none = new Pack(
                history.subject().code(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
        Pack pack = history.folded(Pack.class, none, Pack::and);
        return pack.equals(none) ? Optional.empty() : Optional.of(pack);
    }

    public Optional<PackReceived> received() {
        return receivedBy.map(entry -> (PackReceived) entry.saying());
    }

    public Optional<StorageChecked> checked() {
        return checkedBy.map(entry -> (StorageChecked) entry.saying());
    }

    public Optional<SentOff> sentOff() {
        return sentOffBy.map(entry -> (SentOff) entry.saying());
    }

    public boolean gone() {
        return sentOffBy.isPresent();
    }

    public boolean quarantined() {
        return quarantine.filter(Quarantine::open).isPresent();
    }

    /** Not judged yet, or judged defective. */
    public boolean setAside() {
        return quarantine.filter(Quarantine::stands).isPresent();
    }

    public boolean accepted() {
        boolean soundSince = quarantine
                .filter(one -> !one.stands())
                .flatMap(Quarantine::judgedBy)
                .flatMap(judged -> receivedBy.filter(entry -> entry.number() < judged.number()))
                .isPresent();
        return received()
                .filter(said -> said.verdict() == Verdict.ACCEPTED
                        || (said.verdict() == Verdict.QUARANTINED && soundSince && nothingElse(said)))
                .isPresent();
    }

    /** A judgement answers what was seen; a measurement that did not pass, and a paper that is missing, want a new receipt. */
    private static boolean nothingElse(PackReceived said) {
        return said.remarks().stream().allMatch(remark -> remark == PackSaying.Remark.NOT_SOUND);
    }

    public Optional<String> lot() {
        return received()
                .map(PackReceived::lot)
                .or(() -> quarantine.flatMap(one -> one.said().lot()));
    }

    public boolean holdsLot() {
        return quarantine.filter(Quarantine::holdsLot).isPresent();
    }

    /** Where it was put last. */
    public Optional<String> place() {
        return Stream.of(
                        receivedBy.map(
                                entry -> new Put(entry.number(), received().map(PackReceived::place))),
                        checkedBy.map(entry -> new Put(entry.number(), checked().map(StorageChecked::place))),
                        quarantine.map(
                                one -> new Put(one.begun().number(), one.said().place())))
                .flatMap(Optional::stream)
                .filter(put -> put.place().isPresent())
                .max(Comparator.comparingLong(Put::number))
                .flatMap(Put::place);
    }

    private record Put(long number, Optional<String> place) {}

    public Optional<BigDecimal> chargePercent() {
        return checked().map(StorageChecked::chargePercent).or(() -> received().map(PackReceived::chargePercent));
    }

    /** When it was last looked at in storage; the receipt counts as the first look. */
    public Optional<Entry> looked() {
        return checkedBy.or(() -> receivedBy);
    }

    /** The day of the next check; only a pack in storage owes it. */
    public Optional<LocalDate> checkDue(ZoneId zone) {
        return looked().map(
                        entry -> LocalDate.ofInstant(entry.moment().at(), zone).plusMonths(CHECK_MONTHS));
    }

    /** What the last check found outside the window. */
    public List<Outside> outside() {
        return checked().map(StorageChecked::outside).orElse(List.of());
    }

    private Pack and(Entry entry) {
        Optional<Entry> next = Optional.of(entry);
        if (entry.saying() instanceof PackReceived) {
            return new Pack(serial, next, Optional.empty(), quarantine, Optional.empty());
        } else if (entry.saying() instanceof StorageChecked) {
            return new Pack(serial, receivedBy, next, quarantine, sentOffBy);
        } else if (entry.saying() instanceof Quarantined) {
            var begun = new Quarantine(entry, List.of(), Optional.empty());
            return new Pack(serial, receivedBy, checkedBy, Optional.of(begun), Optional.empty());
        } else if (entry.saying() instanceof PackSaying.Watched) {
            return new Pack(serial, receivedBy, checkedBy, quarantine.map(one -> one.watchedBy(entry)), sentOffBy);
        } else if (entry.saying() instanceof PackSaying.Judged) {
            return new Pack(serial, receivedBy, checkedBy, quarantine.map(one -> one.judgedBy(entry)), sentOffBy);
        } else if (entry.saying() instanceof SentOff) {
            return new Pack(serial, receivedBy, checkedBy, quarantine, next);
        }
        return this;
    }
}
