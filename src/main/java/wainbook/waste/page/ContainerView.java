package wainbook.waste.page;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wainbook.ledger.Entry;
import wainbook.page.Filled;
import wainbook.page.Formats;
import wainbook.page.ScanCode;
import wainbook.page.Words;
import wainbook.waste.Container;
import wainbook.waste.WasteSaying.Collected;
import wainbook.waste.WasteSaying.PutIn;
import wainbook.waste.WasteSaying.Share;
import wainbook.waste.note.Note;

/** One container as its page, its label and its note show it. */
public record ContainerView(Container container, ContainerLine line, long seen, Filled filled) {

    /** What lies in it, or lay in it; {@code id} of the form by which it is taken back. */
    public record Line(Entry entry, PutIn put, Optional<String> share, UUID id) {}

    /** What of the note falls on one vehicle. */
    public record OfVehicle(String order, String putIn, String share) {}

    public String label() {
        return container.label();
    }

    public String path() {
        return line.path();
    }

    public List<Line> lines() {
        return container.contents().stream()
                .map(entry -> {
                    PutIn put = (PutIn) entry.saying();
                    return new Line(
                            entry,
                            put,
                            share(put),
                            UUID.nameUUIDFromBytes((filled.id() + put.order() + put.thing())
                                    .getBytes(java.nio.charset.StandardCharsets.UTF_8)));
                })
                .toList();
    }

    private Optional<String> share(PutIn put) {
        return container
                .collected()
                .flatMap(said -> said.shares().stream()
                        .filter(share -> share.order().equals(put.order())
                                && share.thing().equals(put.thing()))
                        .map(share -> ContainerLine.plain(share.shareKg()))
                        .findFirst());
    }

    /** What the note's mass comes to for each vehicle, apportioned. */
    public List<OfVehicle> vehicles() {
        Map<String, BigDecimal[]> sums = new LinkedHashMap<>();
        for (Share share : container.collected().map(Collected::shares).orElse(List.of())) {
            BigDecimal[] sum =
                    sums.computeIfAbsent(share.order(), none -> new BigDecimal[] {BigDecimal.ZERO, BigDecimal.ZERO});
            sum[0] = sum[0].add(share.putInKg());
            sum[1] = sum[1].add(share.shareKg());
        }
        return sums.entrySet().stream()
                .map(one -> new OfVehicle(
                        one.getKey(), ContainerLine.plain(one.getValue()[0]), ContainerLine.plain(one.getValue()[1])))
                .toList();
    }

    /** Whether a vehicle has more than one thing in it, so that a sum says more than the lines. */
    public boolean several() {
        return vehicles().size() < container.contents().size();
    }

    public Note note() {
        return container.collected().orElseThrow().note();
    }

    public boolean consignment() {
        return container.row().hazardous();
    }

    /** Which paper it leaves, or left, by. */
    public String paper() {
        return Words.of("waste.note." + Note.Sort.of(consignment()).name());
    }

    public String counted() {
        return ContainerLine.plain(container.collected().orElseThrow().putInKg());
    }

    public String noteMass() {
        return ContainerLine.plain(note().massKg());
    }

    public boolean scaled() {
        return note().massKg().compareTo(container.collected().orElseThrow().putInKg()) != 0;
    }

    public String keptUntil() {
        return Formats.date(note().keptUntil());
    }

    public String day(LocalDate date) {
        return Formats.date(date);
    }

    public String plain(BigDecimal value) {
        return ContainerLine.plain(value);
    }

    public boolean mirror() {
        return container.row().twin().isPresent();
    }

    public String kind() {
        return Words.of("waste.kind." + container.row().kind().name());
    }

    public ScanCode code() {
        return ScanCode.of(label());
    }

    public String title() {
        return Words.of("waste.containerTitle", label(), line.standing().word());
    }
}
