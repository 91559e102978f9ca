package wainbook.safety.visit;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.Optional;
import java.util.UUID;

/** A visitor's name and firm, outside the ledger. A row that was deleted leaves the record whole, and the visitor a number. */
@Entity
@Table(name = "visitor_name")
public class VisitorName extends PanacheEntityBase {
    @Id
    public UUID knownBy;

    public String fullName;
    public String firm;
    public String salt;

    public static Optional<VisitorName> of(UUID knownBy) {
        return findByIdOptional(knownBy);
    }

    /** How they are called on pages: by number where the name was deleted. */
    public static String called(Visitor visitor) {
        return of(visitor.knownBy()).map(row -> row.fullName).orElse(visitor.number());
    }

    public static String firm(Visitor visitor) {
        return of(visitor.knownBy()).map(row -> row.firm).orElse("");
    }
}
