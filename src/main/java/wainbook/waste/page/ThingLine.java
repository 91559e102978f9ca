package wainbook.waste.page;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.waste.Container;
import wainbook.waste.Labels;
import wainbook.waste.Thing;
import wainbook.waste.WasteSaying.Decided;
import wainbook.waste.WasteSaying.LeftAsPart;

/** Something taken out of a vehicle, in words. */
public record ThingLine(String order, Thing thing, Optional<Container> container, LocalDate today) {

    public String path() {
        return "/orders/" + order + "/strip/" + thing.key();
    }

    public String mass() {
        return ContainerLine.plain(thing.countedKg());
    }

    /** How the mass came from litres; empty where it was weighed. */
    public Optional<String> dipped() {
        return thing.volumeL()
                .flatMap(litres -> thing.density()
                        .map(known -> Words.of(
                                "waste.dipped",
                                ContainerLine.plain(litres),
                                known.kgPerL().toPlainString(),
                                known.source())));
    }

    /** Weighed or dipped anew after it was put in: both stay. */
    public Optional<String> weighedSince() {
        return thing.container().isPresent() && thing.massKg().compareTo(thing.countedKg()) != 0
                ? Optional.of(Words.of("waste.weighedSince", ContainerLine.plain(thing.massKg())))
                : Optional.empty();
    }

    public String fate() {
        return Words.of("process.fate." + thing.fate().name());
    }

    public boolean overdue() {
        return thing.overdue(today);
    }

    public String standing() {
        return Words.of(
                "waste.thing." + (overdue() ? "OVERDUE" : thing.standing().name()));
    }

    public String sign() {
        return switch (thing.standing()) {
            case UNPLACED -> "alert";
            case IN_CONTAINER, IN_STORE -> "done";
            case QUARANTINE -> "hold";
            case UNFIT -> "fail";
            case AWAITING -> "clock";
            case GONE -> "go";
        };
    }

    public String meaning() {
        return switch (thing.standing()) {
            case UNPLACED -> "must";
            case IN_CONTAINER, IN_STORE -> "safe";
            case QUARANTINE -> "warn";
            case UNFIT -> "danger";
            case AWAITING -> overdue() ? "danger" : "quiet";
            case GONE -> "quiet";
        };
    }

    public Optional<String> containerPath() {
        return thing.container().map(Labels::path);
    }

    /** The note under which it left, if it did. */
    public Optional<String> note() {
        return container
                .flatMap(Container::collected)
                .map(said -> Words.of(
                        "waste.underNote",
                        said.note().code(),
                        Formats.date(said.note().on())));
    }

    /** Where it lies or went, for what is in no container. */
    public String where() {
        if (thing.said().left().isPresent()) {
            LeftAsPart left = thing.said().left().get();
            return left.reference().isBlank()
                    ? left.to()
                    : Words.of("waste.withReference", left.to(), left.reference());
        }
        Optional<Decided> decided = thing.said().decided();
        Optional<String> place = decided.flatMap(Decided::place);
        return decided.flatMap(Decided::party)
                .map(party -> Words.of(
                        "waste.forParty",
                        party,
                        thing.dueOn().map(Formats::date).orElse("–"),
                        place.orElse("–")))
                .or(() -> place)
                .orElse("");
    }

    List<String> cells() {
        return List.of(
                thing.key(),
                thing.what(),
                thing.row().code(),
                thing.countedKg().toPlainString(),
                thing.volumeL().map(litres -> litres.toPlainString()).orElse(""),
                thing.fate().name(),
                thing.standing().name(),
                thing.container().orElse(""),
                container
                        .flatMap(Container::collected)
                        .map(said -> said.note().code())
                        .orElse(""),
                thing.dueOn().map(LocalDate::toString).orElse(""),
                where());
    }
}
