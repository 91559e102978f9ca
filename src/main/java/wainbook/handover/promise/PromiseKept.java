package wainbook.handover.promise;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import wainbook.handover.Standing;
import wainbook.handover.document.DocumentSet;
import wainbook.ledger.History;
import wainbook.order.promise.Promise;
import wainbook.station.ItemState;
import wainbook.station.StageRecord;

/** A promise with the evidence it names, there or not yet. */
public record PromiseKept(Promise promise, List<Proof> proofs) {

    /**
     * A check item or a document.
     *
     * @param entry number of the entry on the vehicle's record that passes the item
     */
    public record Proof(String what, boolean there, Optional<Long> entry) {}

    public PromiseKept {
        proofs = List.copyOf(proofs);
    }

    /** Every promise that was made, those withdrawn too. */
    public static List<PromiseKept> of(History history, Stream<StageRecord> records, Optional<DocumentSet> documents) {
        List<ItemState> items =
                records.flatMap(record -> record.items().stream()).toList();
        Function<String, Proof> item = key -> items.stream()
                .filter(state -> state.key().equals(key))
                .flatMap(state -> state.passing().stream())
                .findFirst()
                .map(entry -> new Proof(key, true, Optional.of(entry.number())))
                .orElse(new Proof(key, false, Optional.empty()));
        Predicate<String> inHand = id -> documents
                .flatMap(set -> set.document(id))
                .filter(document -> document.standing() == Standing.IN_HAND)
                .isPresent();
        return Promise.of(history).stream()
                .map(promise -> new PromiseKept(
                        promise,
                        Stream.concat(
                                        promise.said().items().stream().map(item),
                                        promise.said().documents().stream()
                                                .map(id -> new Proof(id, inHand.test(id), Optional.empty())))
                                .toList()))
                .toList();
    }

    public boolean kept() {
        return proofs.stream().allMatch(Proof::there);
    }

    public boolean open() {
        return promise.stands() && !kept();
    }

    /** Whether the vehicle stays for it. */
    public boolean bars() {
        return open() && promise.said().beforeHandover();
    }
}
