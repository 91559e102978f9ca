package wainbook.order.specification;

import wainbook.ledger.Kind;
import wainbook.ledger.Saying;
import wainbook.order.duty.ChassisFigures;
import wainbook.order.duty.Chosen;
import wainbook.order.duty.Duty;

/** What an order’s stream hears of its specification. Each entry says the whole anew; what stood before stays. */
public sealed interface SpecificationSaying extends Saying {

    @Kind("order.dutyStated/1")
    record DutyStated(Duty duty) implements SpecificationSaying {}

    @Kind("order.chassisStated/1")
    record ChassisStated(ChassisFigures chassis) implements SpecificationSaying {}

    @Kind("order.specified/1")
    record Specified(Chosen chosen) implements SpecificationSaying {}
}
