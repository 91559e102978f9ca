package wainbook.works;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.Arrays;
import java.util.List;

/** A person as lists read them. */
@Entity
@Table(name = "person")
public class PersonRow extends PanacheEntityBase {
    @Id
    public String number;

    /** Role words with a space between. */
    public String roles;

    public boolean hasLeft;

    public static List<PersonRow> everybody() {
        return list("order by number");
    }

    public List<String> roleWords() {
        return Arrays.asList(roles.split(" "));
    }
}
