package wainbook.handover.carbon;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import wainbook.ledger.History;
import wainbook.order.FactQuestion;
import wainbook.order.WorkOrder;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.waste.VehicleWaste;

/** What became of the engine that came out: an engine that runs on elsewhere goes on burning. */
@ApplicationScoped
public class EnginesFate {

    private static final String FACT = "engine_fate";

    private final VehicleWaste waste;

    EnginesFate(VehicleWaste waste) {
        this.waste = waste;
    }

    public String inWords(History history, WorkOrder order) {
        return waste.engine(history)
                .map(said -> Words.of("handover.carbonEngineDestroyed", Formats.date(said.on())))
                .orElseGet(() -> Optional.ofNullable(order.facts().get(FACT))
                        .map(fate -> Words.of("handover.carbonEngineFate", FactQuestion.word(fate)))
                        .orElseGet(() -> Words.of("handover.carbonEngineUnknown")));
    }
}
