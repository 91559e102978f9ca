package wainbook.trace.campaign;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.List;

/** A vehicle of a campaign as lists read it. */
@Entity
@Table(name = "campaign_vehicle")
public class CampaignVehicleRow extends PanacheEntityBase {
    @Id
    public String id;

    public String campaign;
    public String workOrder;
    public String operator;
    public boolean isOut;
    public boolean isSettled;
    public String askedOutBy;
    public int letters;

    /** The order by which it comes back; null where there is none. */
    public String rework;

    static String id(String campaign, String order) {
        return campaign + "/" + order;
    }

    /** Open campaigns that are still about a vehicle, by its order or by the one it came back under. */
    static List<String> campaignsOf(String order) {
        return getEntityManager()
                .createQuery(
                        "select v.campaign from CampaignVehicleRow v, CampaignRow c where c.number = v.campaign"
                                + " and c.isClosed = false and v.isOut = false and v.isSettled = false"
                                + " and (v.workOrder = ?1 or v.rework = ?1) order by v.campaign",
                        String.class)
                .setParameter(1, order)
                .getResultList();
    }
}
