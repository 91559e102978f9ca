package wainbook.station.page;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.NotFoundException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.isolation.page.InWords;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Place;
import wainbook.order.WorkOrder;
import wainbook.order.page.OrderBar;
import wainbook.page.Form;
import wainbook.page.Formats;
import wainbook.permit.page.PermitLook;
import wainbook.process.Releases;
import wainbook.process.joint.Joint;
import wainbook.process.sheet.Ask;
import wainbook.station.DeferredWork;
import wainbook.station.ItemState;
import wainbook.station.StageRecord;
import wainbook.station.entry.FormReply;
import wainbook.station.outline.InZones;
import wainbook.station.taking.Taking;
import wainbook.station.tool.ToolsToHand;
import wainbook.station.work.Workplace;
import wainbook.works.instruments.Instrument;
import wainbook.works.instruments.InstrumentRow;
import wainbook.works.shift.WorksDay;

/** Draws the station page's view, by the same rules that its acts are judged by. */
@ApplicationScoped
class StationLook {

    private final Ledger ledger;
    private final Workplace workplace;
    private final Releases releases;
    private final WorksDay day;
    private final Taking taking;
    private final OrderBar bar;

    StationLook(Ledger ledger, Workplace workplace, Releases releases, WorksDay day, Taking taking, OrderBar bar) {
        this.ledger = ledger;
        this.workplace = workplace;
        this.releases = releases;
        this.day = day;
        this.taking = taking;
        this.bar = bar;
    }

    /** What was asked to be looked at: one item, or a zone of the vehicle. */
    record Chosen(Optional<String> item, Optional<String> zone) {
        static Chosen item(String key) {
            return new Chosen(Optional.of(key), Optional.empty());
        }
    }

    StationView at(String number, Chosen chosen, Optional<Long> done, List<Reason> refusals, Form form, Moment moment) {
        History history = ledger.history(Subject.workOrder(number));
        WorkOrder order = WorkOrder.of(history).orElseThrow(NotFoundException::new);
        StageRecord record = record(history, order);
        Optional<Entry> last = done.flatMap(entryNumber -> entry(history, entryNumber));
        Optional<StationView.Said> said =
                last.flatMap(entry -> itemOf(entry, record).flatMap(state -> Verdicts.of(entry, state)));
        var zones = new InZones(releases.outline(order.ordered().variant()), record);
        Optional<String> zone = chosen.zone()
                .or(() -> last.flatMap(entry -> itemOf(entry, record)).flatMap(zones::zone));
        Optional<ItemState> inHand = chosen.item()
                .flatMap(record::item)
                .or(() -> zones.next(zone))
                .or(() -> chosen.zone().flatMap(zones::first))
                .or(() -> zones.next(Optional.empty()));
        Optional<Joint> joint = inHand.flatMap(state -> state.item().joint()).flatMap(releases::joint);
        List<Reason> against = inHand.map(
                        state -> workplace.against(history, moment, state.key(), Optional.empty()).stream()
                                .filter(reason -> !reason.key().equals("works.instrumentUnknown"))
                                .toList())
                .orElse(List.of());
        StationView bare = new StationView(
                order,
                place(order),
                record,
                inHand,
                joint,
                Optional.empty(),
                against,
                refusals,
                said,
                form,
                form.value("id").isEmpty() ? UUID.randomUUID() : UUID.fromString(form.value("id")),
                InWords.of(history, moment.at(), moment.who(), new Formats(day.zone())),
                bar.of(order, moment.at(), DeferredWork.from(history)),
                inHand.flatMap(state -> taking.inHand(history, moment, state.key())),
                HelpView.open(number, history, moment.who()),
                zones.drawing(inHand, chosen.zone()),
                PermitLook.open(history, moment.at(), day.zone()));
        return inHand.isEmpty() ? bare : withInstruments(bare, moment);
    }

    /** Reads what a form sent for an item, by what the item asks. */
    FormReply reply(String number, String item, Map<String, String> typed) {
        History history = ledger.history(Subject.workOrder(number));
        WorkOrder order = WorkOrder.of(history).orElseThrow(NotFoundException::new);
        ItemState state = record(history, order).item(item).orElseThrow(NotFoundException::new);
        return FormReply.of(state.item().asks(), state.item().joint().flatMap(releases::joint), typed);
    }

    /** Whether the page stays with the item after an entry: when it is not done yet. */
    String stay(String number, String item) {
        History history = ledger.history(Subject.workOrder(number));
        return WorkOrder.of(history)
                .map(order -> record(history, order))
                .flatMap(record -> record.item(item))
                .filter(state -> !state.status().settled() && !(state.item().asks() instanceof Ask.Wait))
                .map(state -> "&item=" + item)
                .orElse("");
    }

    private StageRecord record(History history, WorkOrder order) {
        return order.stage()
                .flatMap(stage -> workplace.record(history, order, stage))
                .orElseThrow(NotFoundException::new);
    }

    private static Optional<Entry> entry(History history, long number) {
        return history.entries().stream()
                .filter(entry -> entry.number() == number)
                .findFirst();
    }

    private static Optional<ItemState> itemOf(Entry entry, StageRecord record) {
        return record.items().stream()
                .filter(state ->
                        state.entries().stream().anyMatch(known -> known.id().equals(entry.id())))
                .findFirst();
    }

    private StationView withInstruments(StationView view, Moment moment) {
        Optional<ToolsToHand> tools = view.tool()
                .map(needed -> ledger.drawing(() -> ToolsToHand.of(
                        needed,
                        InstrumentRow.ofKind(needed.kind()),
                        code -> Instrument.of(ledger.history(Subject.instrument(code))),
                        day.of(moment.at()),
                        view.joint().filter(joint -> view.asks() instanceof Ask.Tighten))));
        Form form = tools.filter(known -> view.form().value("instrument").isEmpty())
                .flatMap(known -> known.inHandOf(moment.who(), view.record()))
                .map(code -> view.form().with("instrument", code))
                .orElse(view.form());
        return view.with(tools, form);
    }

    private String place(WorkOrder order) {
        String code = order.at().map(Place::place).orElse("–");
        return releases.station(code).map(station -> station.title()).orElse(code);
    }
}
