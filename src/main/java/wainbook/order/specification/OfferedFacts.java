package wainbook.order.specification;

import java.util.Optional;
import wainbook.ledger.History;
import wainbook.order.duty.ChassisFigures;

/** Facts of a vehicle that its specification answers: offered where they are asked, never stated by themselves. */
public final class OfferedFacts {

    private OfferedFacts() {}

    /** @return the text that would state it; empty where the specification does not know */
    public static Optional<String> of(History history, String fact) {
        Specification specification = Specification.of(history);
        Optional<ChassisFigures> chassis = specification.chassis().map(Specification.Said::what);
        return switch (fact) {
            case "packs" ->
                specification.standing().map(said -> String.valueOf(said.what().packs()));
            case "pack_types" ->
                specification.standing().map(said -> said.what().packType());
            case "axles" -> chassis.map(known -> String.valueOf(known.axles()));
            case "market" -> chassis.map(ChassisFigures::market);
            case "gross_design" ->
                chassis.map(known -> known.plates().grossDesignKg().toPlainString());
            case "gross_plated_new" ->
                specification.standing().stream()
                        .flatMap(said -> said.what().limits().stream())
                        .filter(limit -> limit.what().equals("gross"))
                        .map(limit -> limit.kg().toPlainString())
                        .findFirst();
            case "other_engine_on_board" ->
                chassis.flatMap(ChassisFigures::otherEngine).map(String::valueOf);
            default -> Optional.empty();
        };
    }
}
