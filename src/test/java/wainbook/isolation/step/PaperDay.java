package wainbook.isolation.step;

import static wainbook.isolation.Cast.AUTHORISED;
import static wainbook.isolation.Cast.MORNING;
import static wainbook.isolation.Cast.SECOND_AUTHORISED;
import static wainbook.isolation.Cast.TECHNICIAN;
import static wainbook.isolation.Cast.lockOf;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import wainbook.isolation.Cast;
import wainbook.isolation.Step;
import wainbook.isolation.paper.IsolationForm;
import wainbook.isolation.paper.IsolationForm.Checked;
import wainbook.isolation.paper.IsolationForm.Locked;
import wainbook.isolation.paper.IsolationForm.Opened;
import wainbook.isolation.paper.IsolationForm.Permitted;
import wainbook.isolation.paper.IsolationForm.Proved;
import wainbook.isolation.paper.IsolationForm.Restored;
import wainbook.isolation.paper.IsolationForm.Returned;
import wainbook.isolation.paper.IsolationForm.ShutDown;
import wainbook.isolation.paper.IsolationForm.Signed;
import wainbook.isolation.paper.IsolationForm.Touched;
import wainbook.isolation.permit.Precaution;

/** A form on which everything is as it should be, and the days on which one thing on it is not. Times are minutes of the morning. */
final class PaperDay {

    List<Precaution> confirmed = new ArrayList<>();
    Optional<ShutDown> shutDown = Optional.of(new ShutDown(at(1), "BOX-1", List.of("KEY-1")));
    List<Opened> opened = new ArrayList<>(List.of(new Opened("PACK-1", at(2)), new Opened("INLET", at(3))));
    List<Locked> locks =
            new ArrayList<>(List.of(locked(AUTHORISED, 4, Optional.empty()), locked(TECHNICIAN, 5, Optional.of(60))));
    Optional<Proved> before = Optional.of(proved(AUTHORISED, 10, "VT-1", "PU-1", "240", "239"));
    List<Touched> touches = new ArrayList<>(List.of(
            touched("JB-A", false, 11, "0.3"),
            touched("JB-B", false, 11, "0.2"),
            touched("JB-A", true, 12, "0.3"),
            touched("JB-B", true, 12, "0.1")));
    Optional<Proved> after = Optional.of(proved(AUTHORISED, 13, "VT-1", "PU-1", "240", "241"));
    Optional<Signed> witness = Optional.of(new Signed(SECOND_AUTHORISED, at(14)));
    Optional<Permitted> permit = Optional.of(permitted(SECOND_AUTHORISED, TECHNICIAN));
    List<Signed> readers = new ArrayList<>(List.of(new Signed(TECHNICIAN, at(16))));
    Optional<Returned> back = Optional.of(new Returned(TECHNICIAN, at(59), false));
    Optional<Signed> cancelled = Optional.of(new Signed(SECOND_AUTHORISED, at(61)));
    List<Checked> checks = new ArrayList<>(List.of(new Checked("COVERS", SECOND_AUTHORISED, at(62))));
    Optional<Restored> restored = Optional.of(new Restored(AUTHORISED, at(65), lockOf(AUTHORISED)));

    private PaperDay() {
        for (Step step : List.of(Step.PLAN, Step.SHUT_DOWN, Step.ISSUE_PERMIT, Step.RESTORE)) {
            confirmed.addAll(step.confirmed());
        }
    }

    static IsolationForm good() {
        return with(day -> {});
    }

    static IsolationForm with(Consumer<PaperDay> change) {
        var day = new PaperDay();
        change.accept(day);
        return new IsolationForm(
                AUTHORISED,
                at(0),
                day.confirmed,
                day.shutDown,
                day.opened,
                day.locks,
                day.before,
                day.touches,
                day.after,
                day.witness,
                day.permit,
                day.readers,
                day.back,
                day.cancelled,
                day.checks,
                day.restored);
    }

    static Instant at(int minute) {
        return MORNING.plus(Duration.ofMinutes(minute));
    }

    static Locked locked(String who, int on, Optional<Integer> off) {
        return new Locked(who, lockOf(who), "TAG-" + who, at(on), off.map(PaperDay::at));
    }

    static Proved proved(String who, int minute, String tester, String source, String sourceVolt, String readingVolt) {
        return new Proved(who, at(minute), tester, source, new BigDecimal(sourceVolt), new BigDecimal(readingVolt));
    }

    static Touched touched(String point, boolean again, int minute, String volt) {
        return new Touched(point, again, at(minute), Cast.readings(volt));
    }

    static Permitted permitted(String issuer, String receiver) {
        return new Permitted(issuer, at(15), receiver, "fit the DC/DC converter", List.of("JB-A"), at(300));
    }
}
