package wainbook.house;

import io.quarkus.arc.Arc;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.process.ProcessSaying.Released;
import wainbook.process.ProcessSaying.RouteReleased;
import wainbook.process.Releases;
import wainbook.process.Route;
import wainbook.process.VehicleFacts;
import wainbook.process.rule.Draft;
import wainbook.process.rule.Known;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckSheet;
import wainbook.process.sheet.Condition;

/** A survey sheet and a route of a test's own, so that no other test meets its items or its newer revisions. */
public record OwnSheet(String code, String route) {

    private static final Known KNOWN = new Known(List.of(), Set.of("intake"), Set.of(), VehicleFacts.PREDICATES);

    /** Released in its first revision; the cast is assembled before. */
    public static OwnSheet released(CheckItem... items) {
        String unique = UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        var own = new OwnSheet("SURVEY-" + unique, "ROUTE-" + unique);
        own.next(items);
        Route demo = releases().route("BUS-12M").orElseThrow();
        var route = new Route(own.route, "Route of a test", demo.legs(), demo.vehicleKind(), own.code);
        say(Subject.works(), new RouteReleased(route, 1));
        return own;
    }

    /** Releases the next revision. */
    public void next(CheckItem... items) {
        var draft = new Draft(new CheckSheet(code, "Survey of a test", List.of(items), "intake"));
        Released released = draft.release(KNOWN, releases().sheetInForce(code)).fold(next -> next, reasons -> {
            throw new AssertionError(reasons);
        });
        say(Subject.checkSheet(code), released);
    }

    public static CheckItem item(String key, String title, Ask asks, int plannedMinutes) {
        return new CheckItem(
                key,
                title,
                asks,
                Condition.NONE,
                Optional.empty(),
                Optional.empty(),
                plannedMinutes,
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                1,
                Optional.empty());
    }

    private static void say(Subject subject, Saying saying) {
        var asked = new Told(UUID.randomUUID(), List.of(subject), saying.getClass());
        Actor engineer = Actor.of(
                Cast.WORKS_ENGINEER.number(),
                Arc.container().instance(Clock.class).get());
        Arc.container()
                .instance(Ledger.class)
                .get()
                .write(asked, engineer, reading -> Decision.say(subject, saying))
                .fold(entry -> entry, reasons -> {
                    throw new AssertionError(reasons);
                });
    }

    private static Releases releases() {
        return Arc.container().instance(Releases.class).get();
    }

    private record Told(UUID id, List<Subject> writes, Class<? extends Saying> says) implements Asked {}
}
