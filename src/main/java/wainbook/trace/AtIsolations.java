package wainbook.trace;

import java.util.List;
import java.util.Set;
import wainbook.isolation.IsolationSaying;
import wainbook.ledger.Saying;
import wainbook.trace.Mention.Sort;

/** What the steps of a safe isolation name. */
final class AtIsolations {

    private AtIsolations() {}

    static void add(Saying saying, Set<Mention> named) {
        if (saying instanceof IsolationSaying said) {
            instruments(said).forEach(code -> named.add(Mention.of(Sort.INSTRUMENT, code)));
        }
        if (saying instanceof IsolationSaying.LockedOn said) {
            named.add(Mention.of(Sort.LOCK, said.lock()));
        } else if (saying instanceof IsolationSaying.LivePermitIssued said) {
            named.add(Mention.of(Sort.PERSON, said.second()));
        }
    }

    private static List<String> instruments(IsolationSaying saying) {
        if (saying instanceof IsolationSaying.AtPoint said) {
            return List.of(said.tester());
        }
        if (saying instanceof IsolationSaying.TesterProvedBefore said) {
            return proving(said.proving());
        }
        if (saying instanceof IsolationSaying.TesterProvedAfter said) {
            return proving(said.proving());
        }
        if (saying instanceof IsolationSaying.SanctionIssued said) {
            return List.of(said.instrument().code());
        }
        return saying instanceof IsolationSaying.LivePermitIssued said
                ? List.of(said.gloves().code())
                : List.of();
    }

    private static List<String> proving(IsolationSaying.Proving proving) {
        return List.of(proving.tester().code(), proving.source().code());
    }
}
