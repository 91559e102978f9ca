package wainbook.rehearsal;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.rehearsal.chance.Dice;
import wainbook.rehearsal.time.PlayedClock;
import wainbook.rehearsal.vehicle.AtWork;

/** What happens in the yard in a shift: donors are received and surveyed, so that the line does not run dry. */
final class YardPart implements Consumer<PlayedClock> {

    private static final int WAITING = 2;
    private static final Duration PAUSE = Duration.ofMinutes(10);

    private final Playing playing;
    private final Dice dice;
    private final Instant end;
    private final Tally tally;
    private Optional<PlayedVehicle> vehicle = Optional.empty();
    private Optional<AtWork> work = Optional.empty();

    YardPart(Playing playing, Dice dice, Instant end, Tally tally) {
        this.playing = playing;
        this.dice = dice;
        this.end = end;
        this.tally = tally;
    }

    @Override
    public void accept(PlayedClock clock) {
        while (true) {
            if (!tally.attempt("YARD", clock, () -> look(clock))) {
                vehicle = Optional.empty();
            }
        }
    }

    private void look(PlayedClock clock) {
        List<WorkOrderRow> received = free(Phase.DONOR_RECEIVED);
        if (free(Phase.DONOR_ACCEPTED).size() >= WAITING) {
            clock.pass(PAUSE);
        } else if (received.isEmpty()) {
            clock.pass(PAUSE);
            String order = free(Phase.ORDERED).stream()
                    .findFirst()
                    .map(row -> row.number)
                    .orElseGet(() -> playing.orderedNow(clock));
            new PlayedVehicle(playing, order, clock, dice).received();
        } else {
            survey(received.get(0).number, clock);
        }
    }

    private void survey(String order, PlayedClock clock) {
        if (vehicle.filter(known -> known.number().equals(order)).isEmpty()) {
            vehicle = Optional.of(new PlayedVehicle(playing, order, clock, dice));
            work = vehicle.map(PlayedVehicle::work);
        }
        if (work.orElseThrow().next(end) == AtWork.Next.TOO_LATE) {
            clock.pass(PAUSE);
        }
    }

    private static List<WorkOrderRow> free(Phase phase) {
        return WorkOrderRow.inPhase(phase).stream()
                .filter(row -> row.holds == 0)
                .toList();
    }
}
