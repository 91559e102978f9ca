package wainbook.isolation.step;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wainbook.isolation.Danger;
import wainbook.isolation.IsolationSaying;
import wainbook.isolation.IsolationSaying.Proving;
import wainbook.isolation.IsolationSaying.Reading;
import wainbook.isolation.Mentioned;
import wainbook.isolation.Step;
import wainbook.isolation.permit.Precaution;
import wainbook.isolation.permit.StopCause;
import wainbook.isolation.permit.Work;
import wainbook.isolation.proof.Scope;

/**
 * What a person asks to have recorded: each step with that alone which only the person at the vehicle can know. Records are
 * named as their {@link Step}; forms and the API's bodies are made from their components. Where the entry holds a whole
 * instrument under a name, the code is asked for under another: a request that comes again would seem to differ.
 */
public sealed interface Wanted {

    /** The entry that it would leave. */
    IsolationSaying said(Situation now);

    /** Whom and which instruments it names. */
    default Mentioned mentions() {
        return new Mentioned(Set.of(), Set.of());
    }

    Map<Step, Class<? extends Wanted>> BY_STEP = Arrays.stream(Wanted.class.getPermittedSubclasses())
            .map(type -> type.<Wanted>asSubclass(Wanted.class))
            .collect(Collectors.toUnmodifiableMap(Wanted::step, type -> type));

    static Step step(Class<? extends Wanted> type) {
        return Step.valueOf(
                type.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "_").toUpperCase(Locale.ROOT));
    }

    private static void named(String what) {
        if (what == null || what.isBlank()) {
            throw new IllegalArgumentException("a paper names the exact work");
        }
    }

    /** As {@code lock-on} in a path. */
    static Optional<Step> step(String word) {
        return BY_STEP.keySet().stream().filter(step -> word(step).equals(word)).findFirst();
    }

    static String word(Step step) {
        return step.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    record Plan(List<Precaution> confirmed) implements Wanted {
        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.Planned(
                    now.isolation().number() + 1,
                    now.facts().station().orElse("–"),
                    now.facts().plan().orElseThrow(),
                    now.facts().limits(),
                    now.level(),
                    confirmed);
        }
    }

    record ShutDown(String box, List<String> keys, List<Precaution> confirmed) implements Wanted {
        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.ShutDown(box, keys, confirmed);
        }
    }

    record OpenSource(String source, boolean shownOpen) implements Wanted {
        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.SourceOpened(source, shownOpen);
        }
    }

    record LockOn(String lock, String tag) implements Wanted {
        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.LockedOn(lock, tag, now.level());
        }
    }

    record LockOff(String lock) implements Wanted {
        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.LockedOff(lock);
        }
    }

    record TakeOver() implements Wanted {
        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.TakenOver(now.level());
        }
    }

    record ProveTesterBefore(
            Scope scope, String testerCode, String sourceCode, BigDecimal sourceVolt, BigDecimal readingVolt)
            implements Wanted {
        @Override
        public IsolationSaying said(Situation now) {
            var proving = new Proving(now.used(testerCode), now.used(sourceCode), sourceVolt, readingVolt);
            return new IsolationSaying.TesterProvedBefore(scope, proving, now.level());
        }

        @Override
        public Mentioned mentions() {
            return Mentioned.instruments(testerCode).and(Mentioned.instruments(sourceCode));
        }
    }

    record MeasurePoint(String point, String tester, List<Reading> readings) implements Wanted {
        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.PointMeasured(point, tester, readings);
        }

        @Override
        public Mentioned mentions() {
            return Mentioned.instruments(tester);
        }
    }

    record MeasurePointAgain(String point, String tester, List<Reading> readings) implements Wanted {
        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.PointMeasuredAgain(point, tester, readings);
        }

        @Override
        public Mentioned mentions() {
            return Mentioned.instruments(tester);
        }
    }

    record ProveTesterAfter(String testerCode, String sourceCode, BigDecimal sourceVolt, BigDecimal readingVolt)
            implements Wanted {
        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.TesterProvedAfter(
                    new Proving(now.used(testerCode), now.used(sourceCode), sourceVolt, readingVolt));
        }

        @Override
        public Mentioned mentions() {
            return Mentioned.instruments(testerCode).and(Mentioned.instruments(sourceCode));
        }
    }

    record WitnessProof() implements Wanted {
        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.ProofWitnessed(now.level());
        }
    }

    record IssuePermit(
            String receiver,
            String what,
            String excluded,
            String hazards,
            List<String> pointsOfWork,
            Instant validUntil,
            List<Precaution> confirmed)
            implements Wanted {
        public IssuePermit {
            named(what);
        }

        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.PermitIssued(
                    now.isolation().nextPaper(),
                    receiver,
                    new Work(what, excluded, hazards),
                    pointsOfWork,
                    validUntil,
                    now.level(),
                    now.isolation().isolator().equals(now.who()),
                    confirmed);
        }

        @Override
        public Mentioned mentions() {
            return Mentioned.people(receiver);
        }
    }

    record ReadPaper(int paper) implements Wanted {
        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.PaperRead(paper, now.level());
        }
    }

    record Stop(StopCause cause, Optional<String> note) implements Wanted {
        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.WorkStopped(cause, note);
        }
    }

    record Resume(int permit, List<String> locksSeen, List<Precaution> confirmed) implements Wanted {
        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.WorkResumed(permit, locksSeen, now.level(), confirmed);
        }
    }

    record HandBack(boolean complete, boolean clear, boolean opened) implements Wanted {
        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.HandedBack(complete, clear, opened);
        }
    }

    record CancelPermit(int permit) implements Wanted {
        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.PermitCancelled(permit);
        }
    }

    record IssueSanction(
            String holder,
            String what,
            String excluded,
            String hazards,
            String instrumentCode,
            Instant validUntil,
            List<Precaution> confirmed)
            implements Wanted {
        public IssueSanction {
            named(what);
        }

        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.SanctionIssued(
                    now.isolation().nextPaper(),
                    holder,
                    new Work(what, excluded, hazards),
                    now.used(instrumentCode),
                    validUntil,
                    now.level(),
                    confirmed);
        }

        @Override
        public Mentioned mentions() {
            return Mentioned.people(holder).and(Mentioned.instruments(instrumentCode));
        }
    }

    record EndTest(List<Precaution> confirmed) implements Wanted {
        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.TestEnded(confirmed);
        }
    }

    record IssueLivePermit(
            String tester,
            String second,
            String what,
            String excluded,
            String hazards,
            String glovesCode,
            Instant validUntil,
            List<Precaution> confirmed)
            implements Wanted {
        public IssueLivePermit {
            named(what);
        }

        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.LivePermitIssued(
                    now.isolation().nextPaper(),
                    tester,
                    new Work(what, excluded, hazards),
                    second,
                    now.used(glovesCode),
                    validUntil,
                    now.level(),
                    confirmed);
        }

        @Override
        public Mentioned mentions() {
            return Mentioned.people(tester).and(Mentioned.people(second)).and(Mentioned.instruments(glovesCode));
        }
    }

    record CheckRestoration(String check, boolean passed, Optional<String> note) implements Wanted {
        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.RestorationChecked(check, passed, note);
        }
    }

    record Restore(String lock, List<Precaution> confirmed) implements Wanted {
        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.Restored(lock, now.level(), confirmed);
        }
    }

    record ReportDanger(Danger danger, String where) implements Wanted {
        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.DangerReported(danger, where);
        }
    }

    record ReportAbandonedLock(String lock, String reason, List<Precaution> confirmed) implements Wanted {
        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.LockReportedAbandoned(lock, reason, confirmed);
        }
    }

    record RemoveAbandonedLock(String lock, List<Precaution> confirmed) implements Wanted {
        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.AbandonedLockRemoved(lock, confirmed);
        }
    }

    record TellOwner(String lock) implements Wanted {
        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.OwnerTold(lock);
        }
    }

    record DeclareNoSource(List<String> lookedFor) implements Wanted {
        @Override
        public IsolationSaying said(Situation now) {
            return new IsolationSaying.NoSourceDeclared(lookedFor, now.level());
        }
    }
}
