package wainbook.station.help;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import wainbook.station.StationSaying.Help;

/** A call for help that is not settled, as lists read it. */
@Entity
@Table(name = "open_help_call")
public class OpenHelpCall extends PanacheEntityBase {
    /** The work order's number and its own, since it is numbered within the order. */
    @Id
    public String id;

    public String workOrder;
    public int callNumber;

    @Enumerated(EnumType.STRING)
    public Help askedFor;

    public String place;
    public String words;
    public boolean workStands;
    public String calledBy;
    public Instant since;
    public String answeredBy;

    public static String id(String workOrder, int call) {
        return workOrder + "/" + call;
    }

    public static List<OpenHelpCall> oldestFirst() {
        return list("order by since, id");
    }

    public String path() {
        return HelpCall.path(workOrder, callNumber);
    }
}
