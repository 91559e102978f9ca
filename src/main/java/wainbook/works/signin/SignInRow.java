package wainbook.works.signin;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.Optional;

/** A user name and whose it is. */
@Entity
@Table(name = "sign_in")
public class SignInRow extends PanacheEntityBase {
    @Id
    public String userName;

    public String person;
    public String passwordHash;

    public static Optional<SignInRow> of(String userName) {
        return findByIdOptional(userName);
    }

    public static Optional<SignInRow> ofPerson(String number) {
        return find("person", number).firstResultOptional();
    }
}
