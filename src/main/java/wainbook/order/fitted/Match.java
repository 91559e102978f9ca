package wainbook.order.fitted;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import wainbook.act.Reason;
import wainbook.order.duty.Chosen;
import wainbook.process.component.Component;

/**
 * The packs and parts of a specification against those whose serials stand on the vehicle's record, and against what its route fits.
 *
 * @param chosen the specification; where there is none, nothing is compared
 */
public record Match(String order, String route, Optional<Chosen> chosen, Planned planned, List<Line> lines) {

    /** How one sort of part stands. */
    public enum Verdict {
        AGREES,
        FEWER,
        MORE,
        OTHER_TYPE,
        NOT_READ
    }

    /**
     * One sort of part.
     *
     * @param part by its code; empty for packs, which are counted together
     * @param title what the specification calls it
     * @param serials of those fitted
     * @param strangers packs of another type than specified, with their type
     * @param typeless packs whose type is not on record
     */
    public record Line(
            Optional<String> part,
            String title,
            int specified,
            int planned,
            List<String> serials,
            List<String> strangers,
            int typeless,
            Verdict verdict) {
        public Line {
            serials = List.copyOf(serials);
            strangers = List.copyOf(strangers);
        }

        public int fitted() {
            return serials.size();
        }

        public boolean differs() {
            return verdict != Verdict.AGREES && verdict != Verdict.NOT_READ;
        }

        /** Whether a serial of it is read under this part. */
        public boolean readAs(String read) {
            return part.map(read::equals).orElseGet(() -> Planned.pack(read));
        }
    }

    public Match {
        lines = List.copyOf(lines);
    }

    /** @param library parts of the vehicle's kind in the revision that was chosen by */
    public static Match of(
            String order,
            String route,
            Optional<Chosen> chosen,
            List<Component> library,
            Planned planned,
            List<FittedParts.Part> fitted) {
        var lines = new ArrayList<Line>();
        chosen.ifPresent(specified -> {
            lines.add(packs(specified, planned, fitted));
            library.stream()
                    .flatMap(component -> component.part().stream())
                    .distinct()
                    .map(part -> part(part, library, planned, fitted))
                    .forEach(lines::add);
        });
        return new Match(order, route, chosen, planned, lines);
    }

    private static Line packs(Chosen specified, Planned planned, List<FittedParts.Part> fitted) {
        List<FittedParts.Part> packs =
                fitted.stream().filter(one -> Planned.pack(one.part())).toList();
        List<String> strangers = packs.stream()
                .filter(one -> one.packType()
                        .filter(Predicate.not(specified.packType()::equals))
                        .isPresent())
                .map(one -> one.serial() + " (" + one.packType().orElseThrow() + ")")
                .toList();
        int typeless =
                (int) packs.stream().filter(one -> one.packType().isEmpty()).count();
        return new Line(
                Optional.empty(),
                specified.packType(),
                specified.packs(),
                planned.packs(),
                packs.stream().map(FittedParts.Part::serial).toList(),
                strangers,
                typeless,
                strangers.isEmpty() ? verdict(specified.packs(), packs.size()) : Verdict.OTHER_TYPE);
    }

    private static Line part(String part, List<Component> library, Planned planned, List<FittedParts.Part> fitted) {
        List<Component> specified = library.stream()
                .filter(component -> component.part().equals(Optional.of(part)))
                .toList();
        List<String> serials = fitted.stream()
                .filter(one -> one.part().equals(part))
                .map(FittedParts.Part::serial)
                .toList();
        boolean unread = planned.of(part) == 0 && serials.isEmpty();
        return new Line(
                Optional.of(part),
                specified.stream().map(Component::title).collect(Collectors.joining(", ")),
                specified.size(),
                planned.of(part),
                serials,
                List.of(),
                0,
                unread ? Verdict.NOT_READ : verdict(specified.size(), serials.size()));
    }

    private static Verdict verdict(int specified, int fitted) {
        return fitted == specified ? Verdict.AGREES : fitted < specified ? Verdict.FEWER : Verdict.MORE;
    }

    /** What stands against leaving a stage that reads these parts. */
    public List<Reason> against(Predicate<String> read) {
        return lines.stream()
                .filter(Line::differs)
                .filter(line -> planned.parts().stream().filter(read).anyMatch(line::readAs))
                .map(this::reason)
                .toList();
    }

    /** Whether both parts are counted in one line. */
    public boolean together(String part, String other) {
        return lines.stream().anyMatch(line -> line.readAs(part) && line.readAs(other));
    }

    /** What stands against leaving the works: every difference. */
    public List<Reason> against() {
        return lines.stream().filter(Line::differs).map(this::reason).toList();
    }

    private Reason reason(Line line) {
        if (line.verdict() == Verdict.OTHER_TYPE) {
            return lifted(Reason.of(
                    "order.packsOfOtherType",
                    Reason.WORKS_RULE,
                    line.specified(),
                    line.title(),
                    String.join(", ", line.strangers())));
        }
        return lifted(
                line.part().isEmpty()
                        ? Reason.of(
                                "order.packsDiffer", Reason.WORKS_RULE, line.specified(), line.title(), line.fitted())
                        : Reason.of(
                                "order.partsDiffer",
                                Reason.WORKS_RULE,
                                line.title(),
                                line.part().orElseThrow(),
                                line.specified(),
                                line.fitted()));
    }

    /** Said as soon as a number is chosen that the route does not fit; a route that fits none, of a vehicle come back, says nothing. */
    public Optional<Reason> otherThanPlanned() {
        return chosen.filter(specified -> planned.packs() > 0 && specified.packs() != planned.packs())
                .map(specified -> lifted(Reason.of(
                        "order.routeFitsOther", Reason.WORKS_RULE, specified.packs(), route, planned.packs())));
    }

    private Reason lifted(Reason reason) {
        return reason.liftedAt("/orders/" + order + "/specification");
    }
}
