package wainbook.waste;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.process.stream.ListOfWaste;
import wainbook.waste.WasteSaying.Collected;
import wainbook.waste.WasteSaying.ContainerOpened;
import wainbook.waste.WasteSaying.ContainerSealed;
import wainbook.waste.WasteSaying.Measure;
import wainbook.waste.WasteSaying.PutIn;
import wainbook.waste.WasteSaying.PutInVoided;
import wainbook.waste.WasteSaying.ReturnNoted;

/** A container of waste as its entries leave it. */
public record Container(
        String label,
        ContainerOpened opened,
        Instant since,
        List<Entry> contents,
        Optional<Entry> sealedBy,
        Optional<Entry> collectedBy,
        Optional<Entry> returnedBy) {

    public Container {
        contents = List.copyOf(contents);
    }

    /** Empty where none was opened under this label. */
    public static Optional<Container> of(History history) {
        return history.folded(
                Container.class,
                Optional.<Container>empty(),
                (known, entry) -> entry.saying() instanceof ContainerOpened said
                        ? Optional.of(begun(history.subject().code(), said, entry))
                        : known.map(container -> container.and(entry)));
    }

    private static Container begun(String label, ContainerOpened said, Entry entry) {
        return new Container(
                label, said, entry.moment().at(), List.of(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private Container and(Entry entry) {
        if (entry.saying() instanceof PutIn) {
            var more = new ArrayList<>(contents);
            more.add(entry);
            return with(more, sealedBy, collectedBy, returnedBy);
        } else if (entry.saying() instanceof PutInVoided said) {
            return with(
                    contents.stream()
                            .filter(known -> !is((PutIn) known.saying(), said.order(), said.thing()))
                            .toList(),
                    sealedBy,
                    collectedBy,
                    returnedBy);
        } else if (entry.saying() instanceof ContainerSealed) {
            return with(contents, Optional.of(entry), collectedBy, returnedBy);
        } else if (entry.saying() instanceof Collected) {
            return with(contents, sealedBy, Optional.of(entry), returnedBy);
        } else if (entry.saying() instanceof ReturnNoted) {
            return with(contents, sealedBy, collectedBy, Optional.of(entry));
        }
        return this;
    }

    private Container with(List<Entry> inside, Optional<Entry> closed, Optional<Entry> gone, Optional<Entry> returned) {
        return new Container(label, opened, since, inside, closed, gone, returned);
    }

    private static boolean is(PutIn put, String order, String thing) {
        return put.order().equals(order) && put.thing().equals(thing);
    }

    public List<PutIn> inside() {
        return contents.stream().map(entry -> (PutIn) entry.saying()).toList();
    }

    public boolean holds(String order, String thing) {
        return inside().stream().anyMatch(put -> is(put, order, thing));
    }

    public BigDecimal massKg() {
        return inside().stream().map(PutIn::massKg).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** How much is in it, in what its capacity is counted in. */
    public BigDecimal filled() {
        return opened.measure() == Measure.KG
                ? massKg()
                : inside().stream()
                        .map(put -> put.volumeL().orElse(BigDecimal.ZERO))
                        .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    public ListOfWaste.Row row() {
        return ListOfWaste.ours()
                .find(opened.code())
                .orElseThrow(() -> new IllegalStateException("opened for an unknown code: " + opened.code()));
    }

    /** Whether something may still go in, as far as it is not full. */
    public boolean open() {
        return sealedBy.isEmpty() && collectedBy.isEmpty();
    }

    public Optional<Collected> collected() {
        return collectedBy.map(entry -> (Collected) entry.saying());
    }

    public Optional<ReturnNoted> returned() {
        return returnedBy.map(entry -> (ReturnNoted) entry.saying());
    }

    public List<String> orders() {
        return inside().stream().map(PutIn::order).distinct().sorted().toList();
    }

    /** The day after which somebody is asked why it is still here. */
    public LocalDate askOn(ZoneId zone) {
        return LocalDate.ofInstant(since, zone).plusDays(opened.askAfterDays());
    }
}
