package wainbook.book.telling;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import wainbook.isolation.IsolationSaying.AbandonedLockRemoved;
import wainbook.isolation.IsolationSaying.Confirmed;
import wainbook.isolation.IsolationSaying.DangerReported;
import wainbook.isolation.IsolationSaying.ItemRegistered;
import wainbook.isolation.IsolationSaying.ItemRetired;
import wainbook.isolation.IsolationSaying.LockReportedAbandoned;
import wainbook.isolation.IsolationSaying.LockedOff;
import wainbook.isolation.IsolationSaying.LockedOn;
import wainbook.isolation.IsolationSaying.NoSourceDeclared;
import wainbook.isolation.IsolationSaying.Observed;
import wainbook.isolation.IsolationSaying.OwnerTold;
import wainbook.isolation.IsolationSaying.Planned;
import wainbook.isolation.IsolationSaying.PointMeasured;
import wainbook.isolation.IsolationSaying.PointMeasuredAgain;
import wainbook.isolation.IsolationSaying.ProofWitnessed;
import wainbook.isolation.IsolationSaying.Proving;
import wainbook.isolation.IsolationSaying.Reading;
import wainbook.isolation.IsolationSaying.RestorationChecked;
import wainbook.isolation.IsolationSaying.Restored;
import wainbook.isolation.IsolationSaying.ShutDown;
import wainbook.isolation.IsolationSaying.SourceOpened;
import wainbook.isolation.IsolationSaying.SourceRecorded;
import wainbook.isolation.IsolationSaying.TakenOver;
import wainbook.isolation.IsolationSaying.TesterProvedAfter;
import wainbook.isolation.IsolationSaying.TesterProvedBefore;
import wainbook.isolation.IsolationSaying.VehicleMoved;
import wainbook.isolation.page.NotCounted;
import wainbook.isolation.paper.OnPaperSaying.OnPaper;
import wainbook.isolation.paper.OnPaperSaying.PaperEnded;
import wainbook.isolation.paper.OnPaperSaying.PaperInUse;
import wainbook.isolation.proof.Verdict;
import wainbook.page.Refusal;
import wainbook.page.Words;

/** How the way from live to dead and back is told; its papers are told by {@link PaperTellings}. */
public final class IsolationTellings {

    private IsolationTellings() {}

    static void addTo(Tellings tellings) {
        begin(tellings);
        locks(tellings);
        proof(tellings);
        end(tellings);
        register(tellings);
        onPaper(tellings);
    }

    /** What an entry came to. */
    public static Told.Verdict inWords(Verdict verdict) {
        return switch (verdict) {
            case PASSED, FAILED -> Told.Verdict.of(verdict.passes());
            case DANGER -> new Told.Verdict(false, Words.of("book.danger"));
            case VOIDED -> new Told.Verdict(false, Words.of("book.isolationVoid"));
        };
    }

    static String confirmed(Confirmed said) {
        return said.confirmed().isEmpty()
                ? ""
                : " "
                        + Words.of(
                                "book.confirmedBefore",
                                said.confirmed().stream()
                                        .map(one -> Words.of("isolation.precaution." + one.name()))
                                        .collect(Collectors.joining("; ")));
    }

    static String list(List<String> codes) {
        return codes.isEmpty() ? "–" : String.join(", ", codes);
    }

    /** As it was read, always with its sign, since a wrong way round shows by it. */
    static String volts(BigDecimal volt) {
        String digits = volt.abs().toPlainString();
        String sign = volt.signum() > 0 ? "+" : volt.signum() < 0 ? "−" : "";
        return Words.of("book.volts", sign + digits);
    }

    private static void begin(Tellings tellings) {
        tellings.on(
                Planned.class,
                (said, names) -> Told.of(Words.of(
                                "book.isolationPlanned",
                                said.isolation(),
                                names.place(said.station()),
                                said.plan().code(),
                                said.plan().revision())
                        + confirmed(said)));
        tellings.on(
                ShutDown.class,
                (said, names) -> Told.of(Words.of("book.shutDown", list(said.keys()), said.box()) + confirmed(said)));
        tellings.on(
                SourceOpened.class,
                (said, names) -> Told.of(
                        said.shownOpen()
                                ? Words.of("book.sourceSeenOpen", said.source())
                                : Words.of("book.sourceNotSeenOpen", said.source())));
        tellings.on(TakenOver.class, (said, names) -> Told.of(Words.of("book.takenOver")));
        tellings.on(SourceRecorded.class, (said, names) -> Told.of(Words.of("book.sourceAboard", said.source())));
        tellings.on(
                NoSourceDeclared.class,
                (said, names) -> Told.of(Words.of("book.noSourceDeclared", list(said.lookedFor()))));
        tellings.on(
                DangerReported.class,
                (said, names) -> Told.of(Words.of(
                        "book.dangerReported",
                        Words.of("isolation.danger." + said.danger().name()),
                        said.where())));
    }

    private static void locks(Tellings tellings) {
        tellings.on(LockedOn.class, (said, names) -> Told.of(Words.of("book.lockedOn", said.lock(), said.tag())));
        tellings.on(LockedOff.class, (said, names) -> Told.of(Words.of("book.lockedOff", said.lock())));
        tellings.on(
                LockReportedAbandoned.class,
                (said, names) -> Told.of(Words.of("book.lockAbandoned", said.lock(), said.reason()) + confirmed(said)));
        tellings.on(
                AbandonedLockRemoved.class,
                (said, names) -> Told.of(Words.of("book.lockRemoved", said.lock()) + confirmed(said)));
        tellings.on(OwnerTold.class, (said, names) -> Told.of(Words.of("book.ownerTold", said.lock())));
    }

    private static void proof(Tellings tellings) {
        tellings.on(
                TesterProvedBefore.class,
                (said, names) -> Told.of(
                        Words.of(
                                "book.testerProvedBefore",
                                said.tester(),
                                said.proving().source().code(),
                                Words.of("isolating.scope." + said.scope().name())),
                        proving(said.proving())));
        tellings.on(
                TesterProvedAfter.class,
                (said, names) -> Told.of(
                        Words.of(
                                "book.testerProvedAfter",
                                said.proving().tester().code(),
                                said.proving().source().code()),
                        proving(said.proving())));
        tellings.on(
                PointMeasured.class,
                (said, names) -> Told.of(
                        Words.of("book.pointMeasured", said.point(), said.tester()), readings(said.readings())));
        tellings.on(
                PointMeasuredAgain.class,
                (said, names) -> Told.of(
                        Words.of("book.pointMeasuredAgain", said.point(), said.tester()), readings(said.readings())));
        tellings.on(
                Observed.class,
                (said, names) -> Told.of(
                        Words.of("book.pointObserved", said.point(), said.tester(), NotCounted.inWords(said)),
                        readings(said.readings())));
        tellings.on(ProofWitnessed.class, (said, names) -> Told.of(Words.of("book.proofWitnessed")));
    }

    private static void end(Tellings tellings) {
        tellings.on(
                RestorationChecked.class,
                (said, names) ->
                        Told.of(Words.of("book.restorationChecked", said.check()) + PaperTellings.note(said.note())));
        tellings.on(Restored.class, (said, names) -> Told.of(Words.of("book.restored", said.lock()) + confirmed(said)));
        tellings.on(
                VehicleMoved.class,
                (said, names) -> Told.of(Words.of(
                        "book.movedIsolated",
                        names.place(said.from()),
                        said.to().map(names::place).orElse("–"))));
    }

    private static void onPaper(Tellings tellings) {
        tellings.on(PaperInUse.class, (said, names) -> Told.of(Words.of("book.paperInUse", said.form())));
        tellings.on(
                PaperEnded.class, (said, names) -> Told.of(Words.of("book.paperEnded", said.form(), said.reason())));
        tellings.on(
                OnPaper.class,
                (said, names) -> Told.of(Words.of(
                                said.closed() ? "book.isolationOnPaper" : "book.isolationOnPaperOpen",
                                said.form(),
                                names.person(said.written().isolator()),
                                names.time(said.written().begunAt()))
                        + " "
                        + Words.of(
                                "book.writtenOver", names.person(said.transcribedBy()), names.person(said.comparedBy()))
                        + notShown(said)));
    }

    private static String notShown(OnPaper said) {
        return said.notShown().isEmpty()
                ? ""
                : " "
                        + Words.of(
                                "book.notShownIsolated",
                                said.notShown().stream()
                                        .distinct()
                                        .map(Refusal::bare)
                                        .collect(Collectors.joining(" ")));
    }

    private static void register(Tellings tellings) {
        tellings.on(
                ItemRegistered.class,
                (said, names) -> Told.of(Words.of(
                        "book.itemRegistered",
                        Words.of("isolating.sort." + said.sort().name()),
                        said.number(),
                        said.owner().map(names::person).orElse("–"))));
        tellings.on(
                ItemRetired.class,
                (said, names) -> Told.of(Words.of("book.itemRetired", said.number(), said.reason())));
    }

    private static String proving(Proving proving) {
        return Words.of("book.provedOn", volts(proving.readingVolt()), volts(proving.sourceVolt()));
    }

    private static String readings(List<Reading> readings) {
        return readings.stream()
                .map(reading -> Words.of(
                        "book.pairRead",
                        Words.of("isolating.pair." + reading.pair().name()),
                        volts(reading.volt())))
                .collect(Collectors.joining("; "));
    }
}
