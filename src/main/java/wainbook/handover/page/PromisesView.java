package wainbook.handover.page;

import java.util.List;
import java.util.UUID;
import wainbook.handover.promise.PromiseKept;

/** The promises of an order with their evidence. */
public record PromisesView(String number, List<PromiseKept> promises, boolean mayState) {

    public PromisesView {
        promises = List.copyOf(promises);
    }

    public long open() {
        return promises.stream().filter(PromiseKept::open).count();
    }

    /** Each form has an id of its own, so that sending it twice writes once. */
    public UUID formOf(PromiseKept one) {
        return UUID.randomUUID();
    }
}
