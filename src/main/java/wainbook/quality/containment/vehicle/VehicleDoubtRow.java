package wainbook.quality.containment.vehicle;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import wainbook.quality.QualitySaying.Gravity;

/** What is in doubt on a vehicle, as lists read it. */
@Entity
@Table(name = "vehicle_doubt")
public class VehicleDoubtRow extends PanacheEntityBase {
    @Id
    public String id;

    public String containment;
    public String workOrder;
    public Instant since;
    public int sureOut;
    public int possible;
    public int safe;
    public int openReadings;
    public int openSureOut;

    @Enumerated(EnumType.STRING)
    public Gravity gravest;

    public boolean held;
    public boolean informed;

    /** Vehicles with something sure out first, then those with the most to decide. */
    public static List<VehicleDoubtRow> of(String containment) {
        return list(
                "containment = ?1 order by openSureOut desc, openReadings desc, sureOut desc, workOrder", containment);
    }

    public static List<VehicleDoubtRow> open() {
        return list("openReadings > 0 order by since, id");
    }

    public static String id(String containment, String order) {
        return containment + "/" + order;
    }

    public int decided() {
        return sureOut + possible - openReadings;
    }
}
