package wainbook.station.work;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wainbook.act.Moment;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFiles;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.order.hold.StandingHolds;
import wainbook.pack.Fitting;
import wainbook.process.Releases;
import wainbook.process.joint.Joint;
import wainbook.process.sheet.CheckItem;
import wainbook.station.DeferredWork;
import wainbook.station.ItemState;
import wainbook.station.StageRecord;
import wainbook.station.joint.SecondCheck;
import wainbook.station.serial.StandingSerials;
import wainbook.works.Person;
import wainbook.works.instruments.DoubtedSince;
import wainbook.works.instruments.Instrument;
import wainbook.works.shift.WorksDay;

/** Brings together what an entry is decided from: the vehicle's record, the sheet, the person, the instrument, the day. */
@ApplicationScoped
public class Workplace {

    private final Ledger ledger;
    private final Releases releases;
    private final WorksDay day;
    private final Electrical electrical;
    private final EvidenceFiles files;
    private final Fitting packs;
    private final StandingHolds holds;

    Workplace(
            Ledger ledger,
            Releases releases,
            WorksDay day,
            Electrical electrical,
            EvidenceFiles files,
            Fitting packs,
            StandingHolds holds) {
        this.ledger = ledger;
        this.releases = releases;
        this.day = day;
        this.electrical = electrical;
        this.files = files;
        this.packs = packs;
        this.holds = holds;
    }

    /** The item in hand, or why there is none: no such order, vehicle at no stage, no such item. */
    public Outcome<Work> at(History history, Moment moment, String item, Optional<String> instrumentCode) {
        return inHand(history, item).map(known -> {
            var power = new ArrayList<>(electrical.against(known.state().item(), history, moment));
            return work(known, moment, moment.at(), ledger::history, instrumentCode, power);
        });
    }

    /**
     * The item as it was in hands when the tool was down: person and instrument as they stood then, the vehicle as it stands now.
     *
     * @param done who did it, and when
     */
    public Outcome<Work> onPaper(
            History history, Moment done, Instant now, String item, Optional<String> instrumentCode) {
        return inHand(history, item).map(known -> {
            var power = new ArrayList<>(electrical.onPaper(known.state().item(), history, done));
            instrumentCode
                    .filter(Workplace::isCode)
                    .flatMap(code -> DoubtedSince.against(ledger.history(Subject.instrument(code)), done.at()))
                    .ifPresent(power::add);
            return work(known, done, now, subject -> ledger.history(subject).upTo(done.at()), instrumentCode, power);
        });
    }

    private record InHand(History history, WorkOrder order, StageRecord record, ItemState state) {}

    private Outcome<InHand> inHand(History history, String item) {
        Optional<WorkOrder> known = WorkOrder.of(history);
        if (known.isEmpty()) {
            return Outcome.refused(Reason.of(
                    "order.notFound", Reason.WORKS_RULE, history.subject().code()));
        }
        WorkOrder order = known.get();
        Optional<StageRecord> record = order.stage().flatMap(stage -> record(history, order, stage));
        if (record.isEmpty()) {
            return Outcome.refused(Reason.of("station.atNoStage", Reason.WORKS_RULE, order.number()));
        }
        return record.get()
                .item(item)
                .map(state -> Outcome.done(new InHand(history, order, record.get(), state)))
                .orElseGet(() -> Outcome.refused(Reason.of(
                        "station.itemNotFound",
                        Reason.WORKS_RULE,
                        item,
                        record.get().binding().sheet())));
    }

    private Work work(
            InHand known,
            Moment moment,
            Instant now,
            Function<Subject, History> records,
            Optional<String> instrumentCode,
            List<Reason> power) {
        CheckItem item = known.state().item();
        Person person = Person.of(records.apply(Subject.person(moment.who())));
        Optional<Instrument> instrument = instrumentCode
                .filter(Workplace::isCode)
                .flatMap(code -> Instrument.of(records.apply(Subject.instrument(code))));
        Optional<Joint> joint = item.joint().flatMap(releases::joint);
        SecondCheck.owed(item, known.history()).ifPresent(owed -> power.addAll(owed.against(moment)));
        power.addAll(unfitPacks(item, known.history(), now));
        var guards = new Guards(
                known.order(),
                known.record(),
                known.state(),
                person,
                instrument,
                joint,
                power,
                holds.against(known.order(), Stops.WORK),
                now,
                day.of(moment.at()));
        return new Work(
                known.history(),
                known.record().stage(),
                known.state(),
                guards,
                moment,
                files::file,
                electrical.landing(item, known.history()));
    }

    private static boolean isCode(String text) {
        return text.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,79}");
    }

    /** What stands against the packs that are on the record as those that this item fits. */
    private List<Reason> unfitPacks(CheckItem item, History history, Instant now) {
        if (item.parts().isEmpty()) {
            return List.of();
        }
        StandingSerials standing = StandingSerials.of(history);
        return item.parts().stream()
                .flatMap(use -> standing.of(use.part()).stream())
                .flatMap(serial -> packs.against(serial.part(), serial.number(), true, now).stream())
                .toList();
    }

    /** How a stage stands on a vehicle. */
    public Optional<StageRecord> record(History history, WorkOrder order, String stage) {
        return StageRecord.of(history, order, stage, releases::sheet);
    }

    /** Work given to a later stage and not done yet, oldest first. */
    public List<DeferredWork> deferred(History history, WorkOrder order) {
        return DeferredWork.open(history, order, releases::sheet);
    }

    /** Everything that stands against recording the item now; empty when it may be recorded. Asked before a page is drawn. */
    public List<Reason> against(History history, Moment moment, String item, Optional<String> instrument) {
        return at(history, moment, item, instrument)
                .fold(
                        work -> java.util.stream.Stream.concat(
                                        work.guards().vehicle().stream(), work.guards().counting().stream())
                                .toList(),
                        reasons -> reasons);
    }
}
