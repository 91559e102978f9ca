package wainbook.station.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Reason;
import wainbook.isolation.page.InWords;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.page.Form;
import wainbook.page.Option;
import wainbook.page.RouteBar;
import wainbook.page.Words;
import wainbook.permit.page.PermitLine;
import wainbook.process.joint.CheckWay;
import wainbook.process.joint.Joint;
import wainbook.process.sheet.Ask;
import wainbook.station.ItemState;
import wainbook.station.StageRecord;
import wainbook.station.determination.DetermineView;
import wainbook.station.determination.Unlikely;
import wainbook.station.joint.Tightened;
import wainbook.station.joint.TighteningSequence;
import wainbook.station.outline.BoltPattern;
import wainbook.station.outline.Drawing;
import wainbook.station.outline.InZones;
import wainbook.station.outline.Marked;
import wainbook.station.taking.Taking;
import wainbook.station.tool.ToolNeeded;
import wainbook.station.tool.ToolsToHand;
import wainbook.station.words.ItemLine;
import wainbook.station.words.Wanted;
import wainbook.works.PersonInWords;
import wainbook.works.PersonRow;

/**
 * What the station page shows.
 *
 * @param inHand the item in hand; absent when all are settled
 * @param against what stands against recording it, by this person, with any instrument
 * @param refusals what the last try was refused for
 * @param said what the last entry came to
 * @param power how the vehicle stands electrically, for the reader
 * @param actId the id that the form's entry will have
 * @param hands whose hands the item in hand is in
 * @param calls for help that are not settled
 * @param permits open ones on the vehicle, besides those on high voltage
 * @param drawing the vehicle with the marks of its sheet; absent when the works has none of this kind
 */
public record StationView(
        WorkOrder order,
        String place,
        StageRecord record,
        Optional<ItemState> inHand,
        Optional<Joint> joint,
        Optional<ToolsToHand> tools,
        List<Reason> against,
        List<Reason> refusals,
        Optional<Said> said,
        Form form,
        UUID actId,
        InWords power,
        RouteBar bar,
        Optional<Taking.InHand> hands,
        List<HelpView.Line> calls,
        Optional<Drawing> drawing,
        List<PermitLine> permits) {

    /**
     * The last entry in words.
     *
     * @param undecided whether it failed only because it is not shown to conform
     */
    public record Said(boolean passed, boolean observed, boolean undecided, String text) {}

    StationView with(Optional<ToolsToHand> toHand, Form filled) {
        return new StationView(
                order, place, record, inHand, joint, toHand, against, refusals, said, filled, actId, power, bar, hands,
                calls, drawing, permits);
    }

    /** Holds that stop work here, said before anything else. */
    public List<Held> halts() {
        return order.holdsThatStop(Stops.WORK);
    }

    /** Where the vehicle stands, by its code. */
    public String station() {
        return order.at().map(at -> at.place()).orElse("");
    }

    /** Who can be called for help. */
    public List<Option> helps() {
        return HelpView.helps();
    }

    public UUID callId() {
        return UUID.randomUUID();
    }

    public Ask asks() {
        return inHand.orElseThrow().item().asks();
    }

    public Ask.Measure measure() {
        return (Ask.Measure) asks();
    }

    /** What is asked for a quantity that is determined. */
    public DetermineView determine() {
        var ask = (Ask.Determine) asks();
        return DetermineView.of(ask, record.given(ask), form, refusals);
    }

    /** What stands against the last try; what only says how to go on is said with the fields. */
    public List<Reason> standing() {
        return refusals.stream().filter(reason -> !DetermineView.next(reason)).toList();
    }

    /** What was determined on this vehicle at this stage beside the item in hand, of the same kind. */
    public List<String> besides() {
        return inHand.stream()
                .filter(state -> state.item().asks() instanceof Ask.Determine)
                .flatMap(state -> record.besides(state.item()))
                .toList();
    }

    public Ask.Quantity quantity() {
        return (Ask.Quantity) asks();
    }

    public Ask.Table table() {
        return (Ask.Table) asks();
    }

    public Ask.Software software() {
        return (Ask.Software) asks();
    }

    /** The part whose serial or lot is asked for. */
    public String part() {
        return asks() instanceof Ask.Serial serial ? serial.part() : ((Ask.Lot) asks()).part();
    }

    /** A calibration is read from a control unit, a lot from a label. */
    public String lotLabel() {
        return part().startsWith("CALIBRATION") ? Words.of("station.asReported") : Words.of("station.lot", part());
    }

    /** What the electrical condition of the item in hand asks, in words. */
    public String condition() {
        return Words.of(
                "station.condition." + inHand.orElseThrow().item().condition().name());
    }

    /** For the template, which picks the fields by it. */
    public String kind() {
        return asks().getClass().getSimpleName();
    }

    public Optional<ToolNeeded> tool() {
        return ToolNeeded.of(asks(), joint);
    }

    /** Who may stand by where work takes two: everybody who is at this works. */
    public List<Option> seconds() {
        return PersonRow.everybody().stream()
                .filter(row -> !row.hasLeft)
                .map(row -> new Option(row.number, PersonInWords.name(row.number) + ", " + row.number))
                .toList();
    }

    public List<Option> instruments() {
        return tools.map(ToolsToHand::options).orElse(List.of());
    }

    /** What the tool in hand is accepted at for the joint in hand. */
    public Optional<ToolsToHand.Accepting> accepting() {
        return tools.flatMap(known -> known.accepting(form.value("instrument")));
    }

    /** Whether a torque looks like a slip, so that whoever is sure can say so. */
    public boolean asksAgain() {
        return refusals.stream()
                .anyMatch(reason -> reason.key().equals("station.didYouMean") || Unlikely.KEYS.contains(reason.key()));
    }

    public String sure() {
        return Words.of(asks() instanceof Ask.Determine ? "station.sureOfReadings" : "station.sure");
    }

    /** Whether the person may record it; without an instrument chosen that rule is left open. */
    public boolean mayRecord() {
        return against.isEmpty();
    }

    /** The joint in hand as its bolts lie. */
    public BoltPattern pattern() {
        return TighteningSequence.of(joint.orElseThrow());
    }

    /** How the joint in hand is checked again, for the template. */
    public String way() {
        return CheckWay.of(joint.orElseThrow()).name();
    }

    /** What may be found at a fastener of a marked joint. */
    public List<Option> findings() {
        return Arrays.stream(CheckWay.Found.values())
                .map(found -> new Option(found.name(), Words.of("station.found." + found.name())))
                .toList();
    }

    /** Whether an angle is asked for beside each torque. */
    public boolean angled() {
        return asks() instanceof Ask.Tighten && joint.flatMap(Joint::angle).isPresent();
    }

    /** In which steps the joint in hand is brought to its torque. */
    public List<String> passes() {
        return asks() instanceof Ask.Tighten ? TighteningSequence.passes(joint.orElseThrow()) : List.of();
    }

    /** What the joint in hand was last recorded with. */
    public Optional<Tightened> tightened() {
        return inHand.flatMap(state -> joint.flatMap(known -> Tightened.last(state, known)));
    }

    /** Further open items at the place of the one in hand, so that nobody walks round the vehicle twice. */
    public List<Marked> nextHere() {
        return drawing.flatMap(drawn ->
                        drawn.zones().stream().filter(Drawing.Zone::inHand).findFirst())
                .map(zone -> zone.items().stream()
                        .filter(item -> item.open() && !item.inHand())
                        .toList())
                .orElse(List.of());
    }

    public List<Option> options() {
        List<Option> options = new ArrayList<>();
        if (asks() instanceof Ask.Choice choice) {
            choice.options().forEach(option -> options.add(new Option(option.text(), option.text())));
        } else if (asks() instanceof Ask.Attended attended) {
            attended.options().forEach(option -> options.add(new Option(option.text(), option.text())));
        }
        return options;
    }

    /** What the item asks for, as a line: limits with their unit, expected value, form. */
    public Optional<String> wanted() {
        return Wanted.of(asks(), joint);
    }

    /** The name of a table's field. */
    public String cell(int row, int column) {
        return "cell" + (row * ((Ask.Table) asks()).columns().size() + column + 1);
    }

    public List<ItemLine> lines(ItemState item) {
        return ItemLine.of(item);
    }

    public String status(ItemState item) {
        return Words.of("station.status." + item.status().name());
    }

    /** The state of the mark beside an item. */
    public String mark(ItemState item) {
        if (inHand.filter(known -> known.key().equals(item.key())).isPresent()) {
            return "now";
        }
        return InZones.standing(item).name().toLowerCase(Locale.ROOT);
    }

    /** Whether something was weighed or dipped here that has to go somewhere. */
    public boolean takesOut() {
        return record.items().stream()
                .anyMatch(state -> state.item().asks() instanceof Ask.Quantity ask
                        && ask.stream().isPresent()
                        && state.passing().isPresent());
    }

    public int left() {
        return record.unsettled().size();
    }
}
