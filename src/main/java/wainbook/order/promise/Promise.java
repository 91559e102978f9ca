package wainbook.order.promise;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.order.promise.PromiseSaying.OptionPromised;
import wainbook.order.promise.PromiseSaying.PromiseWithdrawn;

/**
 * Something promised to the operator, as it stands.
 *
 * @param withdrawn why it no longer stands
 */
public record Promise(OptionPromised said, Instant at, String who, Optional<String> withdrawn) {

    /** All of an order in the order in which they were made, those withdrawn too. */
    public static List<Promise> of(History history) {
        return history.folded(
                Promise.class,
                List.<Promise>of(),
                (promises, entry) ->
                        entry.saying() instanceof PromiseSaying said ? after(promises, said, entry) : promises);
    }

    private static List<Promise> after(List<Promise> promises, PromiseSaying said, Entry entry) {
        if (said instanceof OptionPromised promised) {
            var more = new ArrayList<>(promises);
            more.add(new Promise(promised, entry.moment().at(), entry.moment().who(), Optional.empty()));
            return List.copyOf(more);
        }
        PromiseWithdrawn withdrawn = (PromiseWithdrawn) said;
        return promises.stream()
                .map(one -> one.number() == withdrawn.promise()
                        ? new Promise(one.said, one.at, one.who, Optional.of(withdrawn.reason()))
                        : one)
                .toList();
    }

    public int number() {
        return said.promise();
    }

    public boolean stands() {
        return withdrawn.isEmpty();
    }
}
