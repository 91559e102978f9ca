package wainbook.order.specification;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.History;

/** What a vehicle weighed when it came and when it was built: answered by the room that records it. */
public interface Weighings {

    /** @param item of the survey, as people read it */
    record Received(BigDecimal frontKg, BigDecimal rearKg, String item) {}

    /**
     * One axle as built.
     *
     * @param axle from the front, 1 the foremost
     * @param item of its sheet
     */
    record AxleWeighed(int axle, BigDecimal kg, String item) {}

    /** The donor's axles, each group as one. */
    Optional<Received> received(History history);

    /**
     * Every axle that was weighed after the conversion, from the front.
     *
     * @param frontAxles how many axles stand in front: two where two are steered
     */
    List<AxleWeighed> asBuilt(History history, int frontAxles);
}
