package wainbook.line.milestone.page;

import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.line.milestone.Milestone;
import wainbook.line.milestone.MilestoneLook;
import wainbook.line.milestone.MilestoneLook.Passing;
import wainbook.line.milestone.MilestoneLook.Way;
import wainbook.page.SignedIn;
import wainbook.works.shift.WorksDay;

/** The milestones of orders for scripts. */
@Path("/api/v1/milestones")
public class MilestonesApi {

    private static final int LEAF_ROWS = 200;

    /** @param orders how many fit in all; {@code page} counts from 1 */
    public record Answer(int page, long orders, List<OfOrder> milestones) {}

    /**
     * One order with its milestones.
     *
     * @param earlier the order under which the vehicle was handed over before, where it came back
     */
    public record OfOrder(String order, String kind, Optional<String> earlier, List<One> passed) {
        static OfOrder of(Way way) {
            return new OfOrder(
                    way.order().number,
                    way.order().vehicleKind,
                    Optional.ofNullable(way.order().earlier),
                    way.passings().stream().map(One::of).toList());
        }
    }

    /**
     * One milestone.
     *
     * @param id of the entry, the same as in a delivery
     */
    public record One(
            Milestone milestone,
            Optional<LocalDate> promisedOn,
            Optional<Instant> expected,
            Optional<Instant> reached,
            Optional<Long> entry,
            Optional<UUID> id) {
        static One of(Passing passing) {
            return new One(
                    passing.milestone(),
                    passing.promisedOn(),
                    passing.expected(),
                    passing.reached().map(row -> row.reachedAt),
                    passing.reached().map(row -> row.entryNumber),
                    passing.reached().map(row -> row.entry));
        }
    }

    private final MilestoneLook look;
    private final WorksDay day;
    private final SignedIn signedIn;

    MilestonesApi(MilestoneLook look, WorksDay day, SignedIn signedIn) {
        this.look = look;
        this.day = day;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public Answer milestones(
            @RestQuery Optional<String> search,
            @RestQuery Optional<String> phase,
            @RestQuery Optional<String> milestone,
            @RestQuery Optional<String> from,
            @RestQuery Optional<String> to,
            @RestQuery Optional<Integer> page) {
        AskedMilestones asked = AskedMilestones.of(search, phase, milestone, from, to, day.zone());
        int number = Math.max(1, page.orElse(1));
        return new Answer(
                number,
                asked.orders().find().count(),
                look
                        .of(
                                asked.orders()
                                        .find()
                                        .page(number - 1, LEAF_ROWS)
                                        .list(),
                                signedIn.now().at())
                        .stream()
                        .map(OfOrder::of)
                        .toList());
    }
}
