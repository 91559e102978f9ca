package wainbook.trace.campaign;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import wainbook.trace.campaign.CampaignSaying.Hazard;

/** A campaign as lists read it. */
@Entity
@Table(name = "campaign")
public class CampaignRow extends PanacheEntityBase {
    @Id
    public String number;

    public String title;

    @Enumerated(EnumType.STRING)
    public Hazard hazard;

    public Instant openedAt;
    public String openedBy;
    public boolean isClosed;
    public Instant closedAt;

    /** Open ones first, then the newest. */
    public static List<CampaignRow> all() {
        return list("order by isClosed, openedAt desc, number");
    }

    static List<CampaignRow> open() {
        return list("isClosed = false order by openedAt, number");
    }
}
