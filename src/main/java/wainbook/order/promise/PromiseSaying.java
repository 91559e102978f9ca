package wainbook.order.promise;

import java.util.List;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;

/** What an order's stream hears of promises. */
public sealed interface PromiseSaying extends Saying {

    /**
     * @param promise its number on the order
     * @param items keys of check items whose passing entries prove it
     * @param documents ids of documents that prove it
     * @param beforeHandover whether the vehicle stays until it is proved
     */
    @Kind("order.optionPromised/1")
    record OptionPromised(
            int promise, String option, List<String> items, List<String> documents, boolean beforeHandover)
            implements PromiseSaying {
        public OptionPromised {
            items = List.copyOf(items);
            documents = List.copyOf(documents);
        }
    }

    @Kind("order.promiseWithdrawn/1")
    record PromiseWithdrawn(int promise, String reason) implements PromiseSaying {}
}
