package wainbook.gate.past;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.gate.past.WrittenBus.at;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.ledger.History;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder.Phase;
import wainbook.station.StationSaying.Help;

/** A vehicle's stays, read from its record. */
class VehicleWayTest {

    @Test
    void stays_follow_one_another_from_the_receipt_to_the_handover() {
        VehicleWay way = bus().received(10)
                .accepted(20)
                .onto(30, "strip")
                .forward(90, "fit")
                .off(120, "fit")
                .back(200, "fit")
                .out(260)
                .handedOver(300)
                .way();

        assertThat(way.stays())
                .extracting(Stay::place)
                .containsExactly("ST-survey", "YARD", "ST-strip", "ST-fit", "BAY", "ST-fit", "YARD");
        assertThat(way.stays())
                .extracting(Stay::arrived)
                .containsExactly(at(10), at(20), at(30), at(90), at(120), at(200), at(260));
        assertThat(way.stays().get(3).left()).contains(at(120));
        assertThat(way.stays().get(6).left()).contains(at(300));
        assertThat(way.onLine()).hasSize(3);
        assertThat(way.inBay()).extracting(Stay::stage).containsExactly(Optional.of("fit"));
        assertThat(way.stays().get(0).phase()).isEqualTo(Phase.DONOR_RECEIVED);
        assertThat(way.began()).contains(at(30));
        assertThat(way.finished()).contains(at(260));
        assertThat(way.cameTo("fit")).contains(at(90));
        assertThat(way.stageAfter("strip")).contains("fit");
        assertThat(way.stageAfter("fit")).isEmpty();
    }

    @Test
    void a_vehicle_that_is_there_still_has_not_left() {
        VehicleWay way = bus().onto(30, "strip").way();

        assertThat(way.stays().get(0).left()).isEmpty();
        assertThat(way.finished()).isEmpty();
        assertThat(way.stays().get(0).within(at(1000), at(2000))).isTrue();
        assertThat(way.stays().get(0).within(at(0), at(30))).isFalse();
    }

    @Test
    void answers_of_the_gate_belong_to_the_stay_they_were_given_in() {
        VehicleWay way = bus().onto(0, "strip")
                .done(40, "strip")
                .refused(60, "strip")
                .done(80, "strip")
                .signed(90, "strip")
                .forward(100, "fit")
                .way();
        Stay stay = way.stays().get(0);

        assertThat(stay.workDone()).contains(at(40));
        assertThat(stay.answers()).extracting(Answer::signed).containsExactly(false, true);
        assertThat(stay.answers())
                .extracting(Answer::evidence)
                .containsExactly(Optional.of(at(40)), Optional.of(at(80)));
        assertThat(stay.answers().get(0).changed()).contains(at(80));
        assertThat(stay.answers().get(1).changed()).isEmpty();
        assertThat(way.stays().get(1).answers()).isEmpty();
    }

    @Test
    void work_is_settled_when_the_last_nonconformity_is_decided() {
        VehicleWay way = bus().onto(0, "strip")
                .done(40, "strip")
                .nonconformity(45, 1, "strip")
                .disposed(70, 1)
                .signed(90, "strip")
                .way();

        assertThat(way.answers().get(0).evidence()).contains(at(40));
        assertThat(way.answers().get(0).settled()).contains(at(70));
    }

    @Test
    void an_entry_voided_after_the_signature_changes_its_evidence() {
        VehicleWay way = bus().onto(0, "strip")
                .signed(30, "strip")
                .done(50, "strip")
                .voided(55)
                .way();

        assertThat(way.answers().get(0).changed()).contains(at(50));
        assertThat(way.answers().get(0).evidence()).isEmpty();
    }

    @Test
    void holds_in_force_and_calls_for_which_work_stood_still_stand_with_the_stay() {
        VehicleWay way = bus().onto(0, "strip")
                .held(10, 1, Stops.WORK)
                .released(20, 1)
                .held(80, 2, Stops.SIGN)
                .called(30, 1, "strip", Help.MAINTENANCE, true)
                .called(35, 2, "strip", Help.MAINTENANCE, false)
                .resolved(45, 1)
                .forward(100, "fit")
                .way();

        assertThat(way.stays().get(0).holds()).extracting(HoldSpell::hold).containsExactly(1, 2);
        assertThat(way.stays().get(1).holds()).extracting(HoldSpell::hold).containsExactly(2);
        assertThat(way.holds().get(0).to()).contains(at(20));
        assertThat(way.holds().get(0).stopsWork()).isTrue();
        assertThat(way.holds().get(1).stopsWork()).isFalse();
        assertThat(way.stays().get(0).standstills())
                .extracting(call -> call.number())
                .containsExactly(1);
        assertThat(way.calls()).hasSize(2);
    }

    @Test
    void a_number_under_which_nothing_was_ordered_has_no_way() {
        assertThat(VehicleWay.of(History.empty(Subject.workOrder("WB-9")))).isEmpty();
    }

    private static WrittenBus bus() {
        return new WrittenBus("WB-1", "strip", "fit");
    }
}
