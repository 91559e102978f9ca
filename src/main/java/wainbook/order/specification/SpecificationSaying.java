package wainbook.order.specification;

import wainbook.ledger.Kind;
import wainbook.ledger.Saying;
import wainbook.ledger.Superseded;
import wainbook.order.duty.ChassisBefore;
import wainbook.order.duty.ChassisFigures;
import wainbook.order.duty.Chosen;
import wainbook.order.duty.Duty;
import wainbook.order.duty.DutyBefore;

/** What an order’s stream hears of its specification. Each entry says the whole anew; what stood before stays. */
public sealed interface SpecificationSaying extends Saying {

    /** As it was said before packs in the cold and years of use were asked. */
    @Kind("order.dutyStated/1")
    record DutyStatedBefore(DutyBefore duty) implements SpecificationSaying, Superseded {
        @Override
        public DutyStated newer() {
            return new DutyStated(duty.newer());
        }
    }

    @Kind("order.dutyStated/2")
    record DutyStated(Duty duty) implements SpecificationSaying {}

    /** As it was said before the ageing of packs and the tyres were asked. */
    @Kind("order.chassisStated/1")
    record ChassisStatedBefore(ChassisBefore chassis) implements SpecificationSaying, Superseded {
        @Override
        public ChassisStated newer() {
            return new ChassisStated(chassis.newer());
        }
    }

    @Kind("order.chassisStated/2")
    record ChassisStated(ChassisFigures chassis) implements SpecificationSaying {}

    @Kind("order.specified/1")
    record Specified(Chosen chosen) implements SpecificationSaying {}
}
