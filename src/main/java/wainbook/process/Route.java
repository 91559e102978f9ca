package wainbook.process;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckSheet;
import wainbook.process.sheet.Condition;

/**
 * The way of one kind of vehicle through the works.
 *
 * @param legs the stages on the line in their order
 * @param vehicleKind as the specification names it
 * @param intakeSheet the check sheet of the survey by which a donor is accepted or rejected
 */
public record Route(String code, String title, List<Leg> legs, String vehicleKind, String intakeSheet) {

    public Route {
        Code.checked("a route", code);
        Code.titled("a route", title);
        Code.checked("a kind of vehicle", vehicleKind);
        Code.checked("a check sheet", intakeSheet);
        if (legs.isEmpty()) {
            throw new IllegalArgumentException("a route has at least one stage");
        }
        var stages = new HashSet<String>();
        for (Leg leg : legs) {
            if (!stages.add(leg.stage())) {
                throw new IllegalArgumentException("a route passes a stage once; " + leg.stage() + " stands twice");
            }
        }
        legs = List.copyOf(legs);
    }

    /** A stage of the route and the check sheet worked there. */
    public record Leg(String stage, String checkSheet) {
        public Leg {
            Code.checked("a stage", stage);
            Code.checked("a check sheet", checkSheet);
        }
    }

    /** An item of one of its sheets. */
    public record Step(String sheet, CheckItem item) {}

    /**
     * Its first item that wants no source of dangerous voltage aboard. A route that has one begins with a donor: a vehicle that
     * comes back has its packs aboard and would stand there. A route without one takes a vehicle that is brought back.
     *
     * @param sheets in force, by their code
     */
    public Optional<Step> bare(Function<String, Optional<CheckSheet>> sheets) {
        return Stream.concat(Stream.of(intakeSheet), legs.stream().map(Leg::checkSheet))
                .flatMap(code -> sheets.apply(code).stream())
                .flatMap(sheet -> sheet.items().stream()
                        .filter(item -> item.condition() == Condition.NO_SOURCE_ABOARD)
                        .map(item -> new Step(sheet.code(), item)))
                .findFirst();
    }

    public Leg first() {
        return legs.get(0);
    }

    public Optional<Leg> leg(String stage) {
        return legs.stream().filter(leg -> leg.stage().equals(stage)).findFirst();
    }

    /** The stage that follows; empty after the last, and for a stage that is not on the route. */
    public Optional<Leg> after(String stage) {
        return leg(stage)
                .map(leg -> legs.indexOf(leg) + 1)
                .filter(next -> next < legs.size())
                .map(legs::get);
    }
}
