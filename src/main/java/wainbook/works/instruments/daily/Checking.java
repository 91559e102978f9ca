package wainbook.works.instruments.daily;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.page.Words;
import wainbook.works.WorksSaying.Calibrated;
import wainbook.works.WorksSaying.InstrumentWithdrawn;
import wainbook.works.WorksSaying.ToolChecked;
import wainbook.works.WorksSaying.WithdrawalCause;
import wainbook.works.instruments.Calibrations;
import wainbook.works.instruments.InDoubt;
import wainbook.works.instruments.Instrument;
import wainbook.works.instruments.InstrumentRule;
import wainbook.works.shift.WorksDay;

/** Keeps the check of a torque tool before work. One that failed withdraws the tool in the same breath. */
@ApplicationScoped
public class Checking {

    /** The kind of instrument that torque tools are checked on; no tool checks a tester. */
    public static final String TESTER = "torque-tester";

    /** What was set, and what the tester read each time. */
    public record ToCheck(UUID id, String code, String tester, BigDecimal target, List<BigDecimal> references)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.instrument(code));
        }

        @Override
        public Class<? extends Saying> says() {
            return ToolChecked.class;
        }
    }

    private final Ledger ledger;
    private final WorksDay day;
    private final InDoubt inDoubt;

    Checking(Ledger ledger, WorksDay day, InDoubt inDoubt) {
        this.ledger = ledger;
        this.day = day;
        this.inDoubt = inDoubt;
    }

    public Outcome<Entry> check(ToCheck asked, Actor actor) {
        Subject subject = Subject.instrument(asked.code());
        Outcome<Entry> outcome = ledger.write(asked, actor, reading -> {
            History history = reading.of(subject);
            LocalDate today = day.of(reading.moment().at());
            Optional<Instrument> tester = Instrument.of(ledger.history(Subject.instrument(asked.tester())));
            List<Reason> against = against(asked, Instrument.of(history), tester, today);
            return against.isEmpty()
                    ? decided(subject, checked(asked, history, tester.orElseThrow()))
                    : Decision.refuse(against);
        });
        return inDoubt.told(outcome, actor);
    }

    private static List<Reason> against(
            ToCheck asked, Optional<Instrument> tool, Optional<Instrument> tester, LocalDate today) {
        var against = new ArrayList<Reason>();
        if (tool.filter(known ->
                        known.kind().startsWith("torque-") && !known.kind().equals(TESTER))
                .isEmpty()) {
            against.add(Reason.of("works.notChecked", Reason.WORKS_RULE, asked.code()));
        }
        tool.filter(known -> !known.covers(asked.target()))
                .ifPresent(known -> against.add(Reason.of(
                                "works.pointOutsideRange",
                                Reason.WORKS_RULE,
                                asked.target().toPlainString(),
                                known.lower().toPlainString(),
                                known.upper().toPlainString(),
                                known.unit())
                        .liftedAt("#target")));
        if (asked.references().size() != DailyCheck.PULLS) {
            against.add(Reason.of("works.threePulls", Reason.WORKS_RULE).liftedAt("#references"));
        }
        InstrumentRule.against(tester, TESTER, asked.references(), today)
                .forEach(reason -> against.add(reason.liftedAt("#tester")));
        return against;
    }

    private static ToolChecked checked(ToCheck asked, History history, Instrument tester) {
        return new DailyCheck(
                        asked.target(),
                        asked.references(),
                        Calibrations.of(history).latest().flatMap(Calibrated::permittedPercent),
                        tester.accuracyPercent().orElse(BigDecimal.ZERO))
                .by(asked.tester());
    }

    private static Decision decided(Subject subject, ToolChecked said) {
        Decision decision = Decision.say(subject, said);
        return DailyCheck.failed(said)
                ? decision.andSay(
                        subject,
                        new InstrumentWithdrawn(
                                WithdrawalCause.CHECK_FAILED,
                                Words.of(
                                        "works.checkFailedReason",
                                        said.errorPercent().toPlainString(),
                                        said.actionPercent().toPlainString()),
                                Optional.empty()))
                : decision;
    }
}
