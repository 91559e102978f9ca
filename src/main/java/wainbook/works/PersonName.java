package wainbook.works;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.Optional;

/** A person's name, outside the ledger. A row that was deleted leaves the record whole, and the person a number. */
@Entity
@Table(name = "person_name")
public class PersonName extends PanacheEntityBase {
    @Id
    public String number;

    public String fullName;
    public String salt;

    public static Optional<PersonName> of(String number) {
        return findByIdOptional(number);
    }
}
