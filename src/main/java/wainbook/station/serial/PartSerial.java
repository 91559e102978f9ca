package wainbook.station.serial;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.List;
import java.util.Optional;
import wainbook.station.serial.StandingSerials.Serial;

/** A part on a vehicle, known by its serial. */
@Entity
@Table(name = "part_serial")
public class PartSerial extends PanacheEntityBase {
    @Id
    public String id;

    public String workOrder;
    public String part;
    public String serialNumber;

    static PartSerial of(String order, Serial serial) {
        var row = new PartSerial();
        row.id = id(order, serial);
        row.workOrder = order;
        row.part = serial.part();
        row.serialNumber = serial.number();
        return row;
    }

    static String id(String order, Serial serial) {
        return order + "/" + serial.part() + "/" + serial.number();
    }

    /** The other vehicle that has this part. */
    public static Optional<String> elsewhere(Serial serial, String order) {
        return find("part = ?1 and serialNumber = ?2 and workOrder <> ?3", serial.part(), serial.number(), order)
                .<PartSerial>firstResultOptional()
                .map(row -> row.workOrder);
    }

    /** Work orders of the vehicles that have a part with this serial. */
    public static List<String> ordersWith(String serialNumber) {
        return PartSerial.<PartSerial>list("serialNumber = ?1 order by workOrder", serialNumber).stream()
                .map(row -> row.workOrder)
                .distinct()
                .toList();
    }
}
