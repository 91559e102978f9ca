package wainbook.house;

import io.quarkus.arc.Arc;
import io.quarkus.elytron.security.common.BcryptUtil;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.restassured.RestAssured;
import io.restassured.specification.RequestSpecification;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.works.PersonName;
import wainbook.works.Role;
import wainbook.works.WorksSaying;
import wainbook.works.signin.SignInRow;

/**
 * The people that tests play with. Call {@link #assemble} before each test class: it engages everybody once and may be
 * called again. User names are role words, and the password is one for all.
 */
public enum Cast {
    TECHNICIAN("technician", "7001", "Tess Nichols", Role.TECHNICIAN),
    SECOND_TECHNICIAN("second-technician", "7002", "Sam Tanner", Role.TECHNICIAN),
    /** A technician whom the tests give what competence they need. */
    AUTHORISED("authorised", "7003", "Ada Thorpe", Role.TECHNICIAN),
    SECOND_AUTHORISED("second-authorised", "7004", "Sid Archer", Role.TECHNICIAN),
    TEAM_LEADER("team-leader", "7005", "Tom Leary", Role.TEAM_LEADER),
    INSPECTOR("inspector", "7006", "Ines Porter", Role.INSPECTOR),
    SECOND_INSPECTOR("second-inspector", "7007", "Saul Innes", Role.INSPECTOR),
    LINE_MANAGER("line-manager", "7008", "Lina Mander", Role.LINE_MANAGER),
    WORKS_ENGINEER("works-engineer", "7009", "Wes Enright", Role.WORKS_ENGINEER),
    QUALITY_ENGINEER("quality-engineer", "7010", "Quin Edwards", Role.QUALITY_ENGINEER),
    HANDOVER_CLERK("handover-clerk", "7011", "Hanna Clerkson", Role.HANDOVER_CLERK),
    AUDITOR("auditor", "7012", "Audrey Torrance", Role.AUDITOR),
    ADMINISTRATOR("administrator", "7013", "Adam Minster", Role.ADMINISTRATOR),
    /** Can sign in and has no role. */
    OUTSIDER("outsider", "7014", "Otto Sidney"),
    /** Was a technician, and left. */
    LEFT("left", "7015", "Leo Forth", Role.TECHNICIAN);

    public static final String PASSWORD = "only-for-the-cast";

    /** When everybody was engaged; acts of a test come later. */
    public static final Instant ENGAGED_AT = Instant.parse("2026-01-05T06:00:00Z");

    private final String user;
    private final String number;
    private final String fullName;
    private final Optional<Role> role;

    Cast(String user, String number, String fullName) {
        this(user, number, fullName, Optional.empty());
    }

    Cast(String user, String number, String fullName, Role role) {
        this(user, number, fullName, Optional.of(role));
    }

    Cast(String user, String number, String fullName, Optional<Role> role) {
        this.user = user;
        this.number = number;
        this.fullName = fullName;
        this.role = role;
    }

    /** Engages everybody who is not engaged yet. */
    public static void assemble() {
        String passwordHash = BcryptUtil.bcryptHash(PASSWORD, 4);
        for (Cast person : values()) {
            String salt = "salt-of-" + person.number;
            person.say(
                    "engaged",
                    new WorksSaying.Engaged(
                            sha256(salt + person.fullName), person.role.stream().toList()));
            QuarkusTransaction.requiringNew().run(() -> person.nameAndPassword(salt, passwordHash));
        }
        LEFT.say("left", new WorksSaying.Left("moved away"));
    }

    public String user() {
        return user;
    }

    /** What the ledger knows this person by. */
    public String number() {
        return number;
    }

    public String fullName() {
        return fullName;
    }

    /** This person at a standing clock. */
    public Actor at(Instant time) {
        return Actor.of(number, Clock.fixed(time, ZoneOffset.UTC));
    }

    /** This person, asking the API. */
    public RequestSpecification asks() {
        return RestAssured.given().auth().preemptive().basic(user, PASSWORD);
    }

    /** Gives this person a competence for ten years from when they were engaged; may be called again. */
    public void give(String competence, int level) {
        LocalDate from = LocalDate.of(2026, 1, 5);
        say(competence, new WorksSaying.CompetenceGiven(competence, level, from, from.plusYears(10), "test"));
    }

    private void say(String what, Saying saying) {
        Subject subject = Subject.person(number);
        UUID id = UUID.nameUUIDFromBytes((number + "/" + what).getBytes(StandardCharsets.UTF_8));
        Ledger ledger = Arc.container().instance(Ledger.class).get();
        List<Entry> said = ledger.history(subject).entries();
        Instant at =
                said.isEmpty() ? ENGAGED_AT : said.get(said.size() - 1).moment().at();
        ledger.write(
                        new Told(id, List.of(subject), saying.getClass()),
                        ADMINISTRATOR.at(at),
                        reading -> Decision.say(subject, saying))
                .fold(entry -> entry, reasons -> {
                    throw new AssertionError(number + " " + what + ": " + reasons);
                });
    }

    private void nameAndPassword(String salt, String passwordHash) {
        if (PersonName.of(number).isEmpty()) {
            var name = new PersonName();
            name.number = number;
            name.fullName = fullName;
            name.salt = salt;
            name.persist();
            var row = new SignInRow();
            row.userName = user;
            row.person = number;
            row.passwordHash = passwordHash;
            row.persist();
        }
    }

    private static String sha256(String text) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }

    private record Told(UUID id, List<Subject> writes, Class<? extends Saying> says) implements Asked {}
}
