package wainbook.ledger.store;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import wainbook.ledger.Projection.Version;

/** By which version the rows of a projection were made last. */
@Entity
@Table(name = "made_by")
public class MadeBy extends PanacheEntityBase {
    @Id
    public String tables;

    public int version;

    public static boolean madeBy(Version wanted) {
        return MadeBy.<MadeBy>findByIdOptional(wanted.tables())
                .filter(row -> row.version == wanted.number())
                .isPresent();
    }

    public static void keep(Version made) {
        MadeBy row = MadeBy.<MadeBy>findByIdOptional(made.tables()).orElseGet(MadeBy::new);
        row.tables = made.tables();
        row.version = made.number();
        row.persist();
    }
}
