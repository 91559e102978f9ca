package wainbook.rehearsal;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Consumer;
import wainbook.ledger.Subject;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.rehearsal.chance.Dice;
import wainbook.rehearsal.time.PlayedClock;
import wainbook.rehearsal.vehicle.AtWork;

/** What happens at one station in a shift: whatever stands there is worked on, signed for and moved on. */
final class StationPart implements Consumer<PlayedClock> {

    private static final Duration PAUSE = Duration.ofMinutes(3);

    private final Playing playing;
    private final String station;
    private final Optional<String> first;
    private final Dice dice;
    private final Instant end;
    private final Tally tally;
    private Optional<Here> here = Optional.empty();

    private record Here(PlayedVehicle vehicle, AtWork work) {}

    /** @param first the stage with which the line begins, where this is a station of it */
    StationPart(Playing playing, String station, Optional<String> first, Dice dice, Instant end, Tally tally) {
        this.playing = playing;
        this.station = station;
        this.first = first;
        this.dice = dice;
        this.end = end;
        this.tally = tally;
    }

    @Override
    public void accept(PlayedClock clock) {
        while (true) {
            if (!tally.attempt(station, clock, () -> look(clock))) {
                here = Optional.empty();
            }
        }
    }

    private void look(PlayedClock clock) {
        Optional<String> found = WorkOrderRow.occupant(station).map(row -> row.number);
        if (found.isEmpty()) {
            here = Optional.empty();
            empty(clock);
            return;
        }
        if (here.filter(known -> known.vehicle().number().equals(found.get())).isEmpty()) {
            var vehicle = new PlayedVehicle(playing, found.get(), clock, dice);
            here = Optional.of(new Here(vehicle, vehicle.work()));
        }
        next(here.get(), clock);
    }

    private void next(Here known, PlayedClock clock) {
        AtWork.Next next = known.work().next(end);
        switch (next) {
            case DONE -> {}
            case SIGNED -> tally.signed();
            case TOO_LATE -> clock.pass(PAUSE);
            case NOTHING -> {
                if (known.vehicle().on()) {
                    tally.moved();
                }
            }
        }
    }

    private boolean beginsHere(String order) {
        return WorkOrder.of(playing.acts.ledger.history(Subject.workOrder(order)))
                .filter(known -> known.ordered().stages().get(0).equals(first.orElseThrow()))
                .isPresent();
    }

    /** The first station takes a donor from the yard; the others wait for what is moved to them. */
    private void empty(PlayedClock clock) {
        clock.pass(PAUSE);
        if (first.isPresent() && WorkOrderRow.occupant(station).isEmpty()) {
            WorkOrderRow.inPhase(Phase.DONOR_ACCEPTED).stream()
                    .filter(row -> row.holds == 0)
                    .filter(row -> beginsHere(row.number))
                    .findFirst()
                    .ifPresent(row -> {
                        new PlayedVehicle(playing, row.number, clock, dice).onto(station);
                        tally.moved();
                    });
        }
    }
}
