package wainbook.isolation;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import wainbook.isolation.IsolationSaying.AtPoint;
import wainbook.isolation.IsolationSaying.Proving;
import wainbook.isolation.IsolationSaying.Reading;
import wainbook.isolation.fact.Instrument;
import wainbook.isolation.proof.Proof;
import wainbook.isolation.proof.Scope;
import wainbook.process.plan.Plan;
import wainbook.process.plan.Point;

/** The questions of the {@link Guards} table that are about waiting, testers and the proof of dead. */
record AskOfProof(Ask ask) {

    private Isolation isolation() {
        return ask.isolation();
    }

    boolean waited() {
        return isolation()
                .waitOverAt()
                .filter(over -> !ask.now().isBefore(over))
                .isPresent();
    }

    String waitOverAt() {
        return isolation().waitOverAt().map(Instant::toString).orElse("");
    }

    boolean scopeWillDo(Scope scope) {
        return scope == Scope.ALL_POINTS || isolation().due() == Scope.POINTS_OF_WORK;
    }

    boolean provesDead(String tester) {
        return ask.instrument(tester).filter(found -> found.sort().provesDead()).isPresent();
    }

    boolean rated(String code) {
        var needed = ask.facts().plan().map(Plan::maximumVolt);
        return needed.isPresent()
                && ask.instrument(code)
                        .filter(found -> found.ratedVolt().compareTo(needed.get()) >= 0)
                        .isPresent();
    }

    boolean free(String code) {
        return ask.instrument(code).flatMap(Instrument::inUseAt).isEmpty();
    }

    /** A proving unit in date, at a direct voltage that would be dangerous: the tester must be seen to see danger. */
    boolean knownSource(Proving proving) {
        return ask.isValid(proving.source(), Instrument.Sort.DIRECT_VOLTAGE_PROVING_UNIT)
                && isolation().limits().dangerous(Point.Pair.PLUS_MINUS, proving.sourceVolt());
    }

    boolean sameSource(Proving proving) {
        return knownSource(proving)
                && isolation()
                        .proof()
                        .filter(proof -> proof.source().equals(proving.source().code()))
                        .isPresent();
    }

    boolean agrees(Proving proving) {
        return isolation().limits().agrees(proving.readingVolt(), proving.sourceVolt());
    }

    boolean proving() {
        return isolation().proof().isPresent() && !provedAgain();
    }

    boolean provedAgain() {
        return isolation().proof().flatMap(Proof::testerProvedAgainAt).isPresent();
    }

    boolean proves() {
        return isolation().proof().filter(proof -> ask.is(proof.prover())).isPresent();
    }

    boolean provesWith(String tester) {
        return isolation()
                .proof()
                .filter(proof -> proof.tester().equals(tester))
                .isPresent();
    }

    String testerUsed() {
        if (ask.said() instanceof AtPoint at) {
            return at.tester();
        }
        return ask.said() instanceof IsolationSaying.TesterProvedAfter after
                ? after.proving().tester().code()
                : "";
    }

    boolean inWindow() {
        return isolation()
                .provingEndsAt()
                .filter(end -> !ask.now().isAfter(end))
                .isPresent();
    }

    boolean unhurried() {
        int seconds = isolation().limits().pointSeconds();
        return isolation()
                .proof()
                .filter(proof -> !ask.now().isBefore(proof.lastTouchAt().plusSeconds(seconds)))
                .isPresent();
    }

    List<String> scopePoints() {
        return isolation()
                .proof()
                .map(proof -> isolation().points(proof.scope()))
                .orElse(List.of());
    }

    List<String> left() {
        return scopePoints().stream()
                .filter(code -> !isolation().proof().orElseThrow().covers(List.of(code)))
                .toList();
    }

    boolean everyPairOnce(AtPoint at) {
        var pairs = at.readings().stream().map(Reading::pair).sorted().toList();
        return isolation()
                .plan()
                .flatMap(plan -> plan.point(at.point()))
                .filter(point -> point.pairs().equals(pairs))
                .isPresent();
    }

    boolean measured(String point) {
        return isolation().proof().flatMap(proof -> proof.point(point)).isPresent();
    }

    boolean settled(String point) {
        int seconds = isolation().limits().reprobeAfterSeconds();
        return isolation()
                .proof()
                .flatMap(proof -> proof.point(point))
                .filter(first -> !ask.now().isBefore(first.at().plusSeconds(seconds)))
                .isPresent();
    }

    boolean provedScope() {
        return isolation().proof().filter(Proof::complete).isPresent() && left().isEmpty();
    }

    /** Young enough to begin work on. What is in force already has its proof behind it. */
    boolean fresh() {
        var longest = Duration.ofMinutes(isolation().limits().permitWithinMinutes());
        return ask.state() == State.IN_FORCE
                || isolation()
                        .proof()
                        .flatMap(Proof::testerProvedAgainAt)
                        .filter(at -> !ask.now().isAfter(at.plus(longest)))
                        .isPresent();
    }

    /** Whether nothing that the proof rests on was withdrawn with effect before it. */
    boolean undoubted() {
        return isolation().undoubted(ask.facts());
    }
}
