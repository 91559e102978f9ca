package wainbook.book.chapter;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.book.page.Vehicle;
import wainbook.book.photograph.Photographs;
import wainbook.book.photograph.Small;
import wainbook.book.telling.Names;
import wainbook.ledger.History;
import wainbook.ledger.stream.StoredStream;
import wainbook.order.WorkOrder;
import wainbook.order.calibration.Comparison;
import wainbook.page.Formats;
import wainbook.page.calculation.Calculations;
import wainbook.process.joint.Joint;
import wainbook.station.StageRecord;
import wainbook.works.Person;

/**
 * What a book is written from: the record of one vehicle up to one entry, and what other records said by then.
 *
 * @param stages those the vehicle has been at, in the order of its route
 * @param instruments the records of those that were used, by code
 * @param people as they stood, by number
 * @param works what the works is called
 * @param photographs that entries point to
 * @param small photographs of its condition made small, by fingerprint
 * @param calibration asked for against the one in the vehicle
 */
public record Material(
        History history,
        WorkOrder order,
        StoredStream stored,
        Vehicle vehicle,
        List<StageRecord> stages,
        Map<String, History> instruments,
        Map<String, Person> people,
        List<Joint> joints,
        Calculations calculations,
        Names names,
        Formats formats,
        String works,
        String kind,
        Photographs photographs,
        Map<String, Small> small,
        Comparison calibration) {

    public Material {
        stages = List.copyOf(stages);
        joints = List.copyOf(joints);
        small = Map.copyOf(small);
    }

    /** The time of the last entry: the book knows nothing later, and so is the same whenever it is made. */
    public Instant at() {
        return stored.at();
    }

    public String number() {
        return order.number();
    }

    public boolean handedOver() {
        return order.phase() == WorkOrder.Phase.HANDED_OVER;
    }

    Optional<Joint> joint(String code) {
        return joints.stream().filter(joint -> joint.code().equals(code)).findFirst();
    }
}
