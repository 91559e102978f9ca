package wainbook.works.signin;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;

/** A token as kept: by its hash. */
@Entity
@Table(name = "api_token")
public class TokenRow extends PanacheEntityBase {
    @Id
    public String tokenHash;

    public String person;
    public String title;
    public Instant madeAt;

    static List<TokenRow> ofPerson(String person) {
        return list("person = ?1 order by madeAt", person);
    }
}
