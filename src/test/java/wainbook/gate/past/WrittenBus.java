package wainbook.gate.past;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Moment;
import wainbook.gate.GateSaying.Refused;
import wainbook.gate.GateSaying.SignedOff;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.matter.MatterSaying.Cause;
import wainbook.matter.MatterSaying.Disposed;
import wainbook.matter.MatterSaying.Disposition;
import wainbook.matter.MatterSaying.NonconformityOpened;
import wainbook.order.OrderSaying.Binding;
import wainbook.order.OrderSaying.Direction;
import wainbook.order.OrderSaying.DonorAccepted;
import wainbook.order.OrderSaying.DonorReceived;
import wainbook.order.OrderSaying.HandedOver;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.OrderSaying.HoldReleased;
import wainbook.order.OrderSaying.Moved;
import wainbook.order.OrderSaying.Ordered;
import wainbook.order.OrderSaying.Place;
import wainbook.order.OrderSaying.Returned;
import wainbook.order.OrderSaying.Stops;
import wainbook.process.sheet.Condition;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.Confirmed;
import wainbook.station.StationSaying.Help;
import wainbook.station.StationSaying.HelpAnswered;
import wainbook.station.StationSaying.HelpCalled;
import wainbook.station.StationSaying.HelpResolved;
import wainbook.station.StationSaying.Voided;

/** The record of one bus, written minute by minute since {@link #BEGIN}. The station of stage {@code strip} is {@code ST-strip}. */
public final class WrittenBus {

    public static final Instant BEGIN = Instant.parse("2026-03-02T07:00:00Z");

    private final List<Entry> entries = new ArrayList<>();
    private final String number;

    public WrittenBus(String number, String... stages) {
        this.number = number;
        say(0, new Ordered("operator", "BUS", "bus", "R", List.of(stages), LocalDate.of(2026, 4, 1)));
    }

    public static Instant at(long minute) {
        return BEGIN.plus(Duration.ofMinutes(minute));
    }

    /** It was handed over before, under another order. */
    public WrittenBus cameBack(long minute) {
        return say(minute, new Returned("WB-0", 7, "f".repeat(64), "VIN", "REG", "leak"));
    }

    public WrittenBus received(long minute) {
        return say(minute, new DonorReceived("VIN", "REG", 1, place("survey"), new Binding("survey", "SHEET", 1)));
    }

    public WrittenBus accepted(long minute) {
        return say(minute, new DonorAccepted("f".repeat(64), new Place(Optional.empty(), "YARD")));
    }

    public WrittenBus onto(long minute, String stage) {
        return moved(minute, Direction.ONTO_LINE, place(stage));
    }

    public WrittenBus forward(long minute, String stage) {
        return moved(minute, Direction.FORWARD, place(stage));
    }

    public WrittenBus off(long minute, String stage) {
        return moved(minute, Direction.OFF_LINE, new Place(Optional.of(stage), "BAY"));
    }

    public WrittenBus back(long minute, String stage) {
        return moved(minute, Direction.BACK_ON, place(stage));
    }

    public WrittenBus out(long minute) {
        return moved(minute, Direction.OUT, new Place(Optional.empty(), "YARD"));
    }

    public WrittenBus handedOver(long minute) {
        return say(minute, new HandedOver("driver", List.of()));
    }

    public WrittenBus done(long minute, String stage) {
        return done(minute, stage, "item");
    }

    public WrittenBus done(long minute, String stage, String item) {
        var basis = new Basis(Condition.NONE, Optional.empty(), Optional.empty());
        return say(minute, new Confirmed(new About(stage, "SHEET", 1, item, List.of()), basis));
    }

    /** The entry that was made last does not count. */
    public WrittenBus voided(long minute) {
        return say(
                minute, new Voided(entries.get(entries.size() - 1).id(), "SHEET/item", "typed at the wrong vehicle"));
    }

    public WrittenBus nonconformity(long minute, int nonconformity, String stage) {
        return say(
                minute,
                new NonconformityOpened(
                        nonconformity, stage, Optional.empty(), Cause.REPORTED, "scratched", Optional.empty()));
    }

    public WrittenBus disposed(long minute, int nonconformity) {
        return say(minute, new Disposed(nonconformity, Disposition.REWORK, "cleaned"));
    }

    public WrittenBus signed(long minute, String stage) {
        return say(minute, new SignedOff(stage, "SHEET", 1, "f".repeat(64), Optional.empty()));
    }

    public WrittenBus refused(long minute, String stage) {
        return say(minute, new Refused(stage, "f".repeat(64), List.of("item"), "a bolt is loose"));
    }

    public WrittenBus held(long minute, int hold, Stops... what) {
        return say(minute, new Held(hold, HoldKind.QUALITY, List.of(what), "crack suspected"));
    }

    public WrittenBus released(long minute, int hold) {
        return say(minute, new HoldReleased(hold, "no crack"));
    }

    public WrittenBus called(long minute, int call, String stage, Help help, boolean stands) {
        return say(
                minute,
                new HelpCalled(call, help, Optional.of(stage), Optional.of(station(stage)), Optional.empty(), stands));
    }

    public WrittenBus answered(long minute, int call) {
        return say(minute, new HelpAnswered(call));
    }

    public WrittenBus resolved(long minute, int call) {
        return say(minute, new HelpResolved(call, Optional.empty()));
    }

    public History history() {
        return new History(Subject.workOrder(number), entries);
    }

    public VehicleWay way() {
        return VehicleWay.of(history()).orElseThrow();
    }

    public static String station(String stage) {
        return "ST-" + stage;
    }

    private static Place place(String stage) {
        return new Place(Optional.of(stage), station(stage));
    }

    private WrittenBus moved(long minute, Direction direction, Place to) {
        return say(
                minute,
                new Moved(
                        direction,
                        new Place(Optional.empty(), "YARD"),
                        to,
                        to.stage().map(code -> new Binding(code, "SHEET", 1)),
                        List.of(),
                        Optional.empty()));
    }

    private WrittenBus say(long minute, Saying saying) {
        long next = entries.size() + 1L;
        entries.add(new Entry(
                UUID.nameUUIDFromBytes((number + next).getBytes(StandardCharsets.UTF_8)),
                Subject.workOrder(number),
                next,
                Moment.of("W-1", at(minute)),
                "0".repeat(64),
                saying));
        return this;
    }
}
