package wainbook.line.forecast.past;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Moment;
import wainbook.gate.Gate;
import wainbook.gate.GateSaying.Refused;
import wainbook.gate.GateSaying.SignedOff;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.line.LineSaying.PartAwaited;
import wainbook.line.LineSaying.PartCame;
import wainbook.line.forecast.past.Away.WorkingMinutes;
import wainbook.order.OrderSaying.Binding;
import wainbook.order.OrderSaying.Direction;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.OrderSaying.HoldReleased;
import wainbook.order.OrderSaying.Moved;
import wainbook.order.OrderSaying.Ordered;
import wainbook.order.OrderSaying.Place;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.process.sheet.Condition;
import wainbook.station.StageRecord;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.Confirmed;
import wainbook.station.StationSaying.Voided;
import wainbook.station.StationSaying.WaitBegun;
import wainbook.station.StationSaying.Waited;
import wainbook.works.shift.Shifts;

/** The record of one bus, written minute by minute; every minute is worked and every sheet is planned with 100 minutes. */
public final class Recorded {

    public static final Instant BEGIN = Instant.parse("2026-03-02T07:00:00Z");

    private static final Basis NO_BASIS = new Basis(Condition.NONE, Optional.empty(), Optional.empty());

    private final List<Entry> entries = new ArrayList<>();
    private final String number;

    public Recorded(String number) {
        this.number = number;
        say(0, new Ordered("operator", "BUS", "bus", "R", List.of("strip", "fit"), LocalDate.of(2026, 4, 1)));
    }

    /** Ordered so many minutes after the beginning, which may be before it. */
    public Recorded(String number, int orderedMinute, LocalDate promised) {
        this.number = number;
        say(orderedMinute, new Ordered("operator", "BUS", "bus", "R", List.of("strip", "fit"), promised));
    }

    public Recorded onto(int minute, String stage) {
        return moved(minute, Direction.ONTO_LINE, Optional.of(stage));
    }

    public Recorded out(int minute) {
        return moved(minute, Direction.OUT, Optional.empty());
    }

    /** Signed for the evidence that there is. */
    public Recorded signedTruly(int minute, String stage, StageRecord.Sheets sheets) {
        History history = history();
        StageRecord record = StageRecord.of(history, WorkOrder.of(history).orElseThrow(), stage, sheets)
                .orElseThrow();
        return say(
                minute,
                new SignedOff(stage, "SHEET", 1, Gate.of(history, record).fingerprint(), Optional.empty()));
    }

    public History history() {
        return new History(Subject.workOrder(number), entries);
    }

    public Recorded at(int minute, String stage) {
        return moved(minute, Direction.FORWARD, Optional.of(stage));
    }

    public Recorded off(int minute, String stage) {
        return moved(minute, Direction.OFF_LINE, Optional.of(stage));
    }

    public Recorded back(int minute, String stage) {
        return moved(minute, Direction.BACK_ON, Optional.of(stage));
    }

    public Recorded done(int minute, String stage) {
        return say(minute, new Confirmed(about(stage, "item"), NO_BASIS));
    }

    public Recorded signed(int minute, String stage) {
        return say(minute, new SignedOff(stage, "SHEET", 1, "f".repeat(64), Optional.empty()));
    }

    public Recorded refused(int minute, String stage) {
        return say(minute, new Refused(stage, "f".repeat(64), List.of("item"), "a bolt is loose"));
    }

    public Recorded held(int minute, Stops what) {
        return say(minute, new Held(1, HoldKind.QUALITY, List.of(what), "crack suspected"));
    }

    public Recorded released(int minute) {
        return say(minute, new HoldReleased(1, "no crack"));
    }

    public Recorded missing(int minute, int part, String stage, LocalDate expected) {
        return say(minute, new PartAwaited(part, stage, "Brake valve, rear", Optional.empty(), expected));
    }

    public Recorded came(int minute, int part) {
        return say(minute, new PartCame(part, ""));
    }

    /** An item called so begins to cure. */
    public Recorded cures(int minute, String stage, String item, int minutes) {
        return say(minute, new WaitBegun(about(stage, item), NO_BASIS, minutes));
    }

    public Recorded cured(int minute, String stage, String item, int begun, int minutes) {
        return say(minute, new Waited(about(stage, item), NO_BASIS, BEGIN.plus(Duration.ofMinutes(begun)), minutes));
    }

    private static About about(String stage, String item) {
        return new About(stage, "SHEET", 1, item, List.of());
    }

    /** What was said last is voided. */
    public Recorded voided(int minute, String item) {
        return say(minute, new Voided(entries.get(entries.size() - 1).id(), "SHEET/" + item, "not mixed well"));
    }

    public VehiclePast past(Shifts shifts) {
        return VehiclePast.of(history(), WorkingMinutes.of(shifts), binding -> 100);
    }

    public VehiclePast past() {
        return VehiclePast.of(
                history(), (from, to) -> Duration.between(from, to).toMinutes(), binding -> 100);
    }

    private Recorded moved(int minute, Direction direction, Optional<String> stage) {
        Optional<Binding> binding = stage.map(code -> new Binding(code, "SHEET", 1));
        return say(
                minute,
                new Moved(
                        direction,
                        new Place(Optional.empty(), "YARD"),
                        new Place(stage, "ST"),
                        binding,
                        List.of(),
                        Optional.empty()));
    }

    private Recorded say(int minute, Saying saying) {
        long next = entries.size() + 1L;
        entries.add(new Entry(
                UUID.nameUUIDFromBytes((number + next).getBytes(StandardCharsets.UTF_8)),
                Subject.workOrder(number),
                next,
                Moment.of("W-1", BEGIN.plus(Duration.ofMinutes(minute))),
                "0".repeat(64),
                saying));
        return this;
    }
}
