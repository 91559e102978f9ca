package wainbook.station;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.ledger.History;
import wainbook.process.Condition;

/** What a vehicle's electrical state says to work under a condition. */
@ApplicationScoped
class Electrical {

    List<Reason> against(Condition condition, History history, Moment moment) {
        return condition == Condition.NONE
                ? List.of()
                : List.of(Reason.of("station.conditionNotShown", Reason.WORKS_RULE, condition));
    }
}
