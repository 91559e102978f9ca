package wainbook.setup.start;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.MethodOrderer.OrderAnnotation;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import wainbook.house.Browsing;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.ledger.verification.Verify;
import wainbook.process.ProcessSaying.Released;
import wainbook.process.VehicleFacts;
import wainbook.setup.DemoWorks;
import wainbook.setup.Folder;
import wainbook.setup.SetupSaying.FilesTaken;
import wainbook.setup.SetupSaying.PasswordSet;
import wainbook.setup.files.WorksFiles;
import wainbook.setup.files.WorksText;
import wainbook.setup.files.WorksZip;
import wainbook.works.Role;
import wainbook.works.WorksSaying.Engaged;
import wainbook.works.signin.Passwords;

/** A works is begun by its pages, takes its folder, gives it out again, and takes a change that two people answer for. */
@QuarkusTest
@TestProfile(EmptyWorks.class)
@TestMethodOrder(OrderAnnotation.class)
class FirstStartTest {

    private static final String PASSWORD = "quay-side-morning-7";
    private static final String FIRST_PASSWORD = "only-to-begin-with";
    private static final String ZIP = "application/zip";

    @Inject
    StartCode code;

    @Inject
    Ledger ledger;

    @Inject
    Verify verify;

    @Inject
    Passwords passwords;

    @Test
    @Order(1)
    void everybody_is_led_to_the_first_page_and_nobody_gets_on_without_the_code() {
        Browsing stranger = Browsing.asStranger();
        assertThat(stranger.get("/").header("Location")).endsWith("/first-start");
        assertThat(stranger.get("/sign-in").header("Location")).endsWith("/first-start");
        assertThat(stranger.page("/first-start")).doesNotContain(code.code());

        Map<String, Object> form = filled(stranger);
        form.put("code", "AAAA-AAAA-AAAA-AAAA");
        Response refused = stranger.send("/first-start", form);

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.asString())
                .contains("This is not the code of this start")
                .contains("Quay works");
        assertThat(ledger.history(Subject.works()).isEmpty()).isTrue();
    }

    @Test
    @Order(2)
    void a_short_password_or_an_unknown_zone_begins_nothing() {
        Browsing stranger = Browsing.asStranger();
        Map<String, Object> form = filled(stranger);
        form.put("password", "short");
        form.put("again", "short");
        form.put("zone", "Europe/Nowhere");

        Response refused = stranger.send("/first-start", form);

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.asString())
                .contains("The password is too short")
                .contains("The zone Europe/Nowhere is not known");
        assertThat(ledger.history(Subject.works()).isEmpty()).isTrue();
    }

    @Test
    @Order(3)
    void the_code_begins_the_works_once_and_makes_its_administrator() {
        Browsing stranger = Browsing.asStranger();
        Response begun = stranger.send("/first-start", filled(stranger));

        assertThat(begun.statusCode()).isEqualTo(303);
        assertThat(begun.header("Location")).endsWith("/sign-in");
        assertThat(stranger.get("/first-start").header("Location")).doesNotEndWith("/first-start");
        assertThat(ledger.history(Subject.works()).number()).isEqualTo(1);
        assertThat(administrator().get("/").header("Location")).endsWith("/setup/works");
        assertThat(administrator().page("/setup/works")).contains("Step 2 of 2").contains("Go on with an empty works");
        assertThat(administrator().get("/line").statusCode()).isEqualTo(200);
    }

    @Test
    @Order(4)
    void a_folder_with_a_fault_is_shown_with_it_and_changes_nothing() {
        var folder = Folder.copyOf(Folder.SMALL).replace("people.csv", "auditor", "spectator");
        Browsing administrator = administrator();
        String look = sent(administrator, folder);

        assertThat(administrator.page(look))
                .contains("1 fault in the files")
                .contains("people.csv")
                .contains("spectator");
        assertThat(administrator.page(look + "/faults.csv"))
                .contains("file,line,column,found,expected,text")
                .contains("people.csv,17,4,spectator,");
        assertThat(ledger.history(Subject.works()).number()).isEqualTo(1);
    }

    @Test
    @Order(5)
    void the_first_folder_is_taken_whole_by_the_administrator_alone() {
        Browsing administrator = administrator();
        String look = sent(administrator, Folder.copyOf(Folder.SMALL));
        assertThat(administrator.page(look)).doesNotContain("Password of the second person");

        Response taken = administrator.send(look + "/taken", administrator.form(look));

        assertThat(taken.header("Location")).endsWith("/setup/works?taken=true");
        assertThat(administrator.page("/setup/works?taken=true")).contains("The files were taken.");
        assertThat(ledger.history(Subject.works()).last(FilesTaken.class))
                .hasValueSatisfying(said -> assertThat(said.confirmedBy()).isEmpty());
        assertThat(verify.everything().sound()).isTrue();
    }

    @Test
    @Order(6)
    void what_it_gives_out_reads_as_what_it_took_and_changes_nothing() {
        byte[] given = administrator().get("/setup/works.zip").asByteArray();
        WorksFiles files = read(given);
        WorksFiles took = read(Folder.copyOf(Folder.SMALL).packed());

        assertThat(files.inOrder())
                .usingRecursiveComparison()
                .ignoringFields("people")
                .isEqualTo(took.inOrder());
        assertThat(files.people())
                .containsAll(took.people())
                .hasSize(took.people().size() + 1);
        assertThat(WorksZip.pack(WorksText.of(files))).isEqualTo(given);
        Browsing administrator = administrator();
        String look = administrator
                .send("/setup/works", administrator.form("/setup/works"), "works.zip", given, ZIP)
                .header("Location");
        assertThat(administrator.page(path(look))).contains("Nothing would change");
    }

    @Test
    @Order(7)
    void nobody_who_came_with_the_files_can_sign_in_before_the_administrator_gives_a_password() {
        assertThat(passwords.person("ingrid", DemoWorks.PASSWORD)).isEmpty();

        for (String person : List.of("W-1012", "W-1013")) {
            Browsing administrator = administrator();
            Map<String, Object> form = administrator.form("/setup/passwords/" + person);
            form.putAll(Map.of("password", FIRST_PASSWORD, "again", FIRST_PASSWORD, "own", "wrong"));
            assertThat(administrator.send("/setup/passwords/" + person, form).statusCode())
                    .isEqualTo(422);
            form.put("own", PASSWORD);
            assertThat(administrator.send("/setup/passwords/" + person, form).statusCode())
                    .isEqualTo(303);
            assertThat(ledger.history(Subject.person(person)).last(PasswordSet.class))
                    .contains(new PasswordSet(false));
        }
        assertThat(Browsing.as("ingrid", FIRST_PASSWORD).get("/setup/works").statusCode())
                .isEqualTo(200);
    }

    @Test
    @Order(8)
    void a_person_chooses_their_own_password_and_the_old_one_is_over_at_once() {
        Browsing kofi = Browsing.as("kofi", FIRST_PASSWORD);
        Map<String, Object> form = kofi.form("/password");
        form.putAll(Map.of("password", PASSWORD + "-kofi", "again", PASSWORD + "-kofi", "own", FIRST_PASSWORD));

        assertThat(kofi.send("/password", form).statusCode()).isEqualTo(303);

        assertThat(ledger.history(Subject.person("W-1013")).last(PasswordSet.class))
                .contains(new PasswordSet(true));
        assertThat(passwords.person("kofi", FIRST_PASSWORD)).isEmpty();
        assertThat(passwords.person("kofi", PASSWORD + "-kofi")).contains("W-1013");
    }

    @Test
    @Order(9)
    void a_changed_sheet_comes_into_force_when_a_second_person_confirms_it() {
        var folder = Folder.copyOf(Folder.SMALL)
                .replace("sheets/strip-bus12.yaml", "planned_minutes: 45", "planned_minutes: 50");
        Browsing ingrid = Browsing.as("ingrid", FIRST_PASSWORD);
        String look = sent(ingrid, folder);
        assertThat(ingrid.page(look))
                .contains("1 line would change")
                .contains("items/engine-out/planned_minutes")
                .contains("Password of the second person");

        Map<String, Object> form = ingrid.form(look);
        assertThat(ingrid.send(look + "/taken", form).asString()).contains("You cannot change the process alone");
        form.putAll(Map.of("second", "ingrid", "secondPassword", FIRST_PASSWORD));
        assertThat(ingrid.send(look + "/taken", form).asString()).contains("You cannot be the second person as well");
        form.putAll(Map.of("second", "kofi", "secondPassword", "not-kofis-password"));
        assertThat(ingrid.send(look + "/taken", form).statusCode()).isEqualTo(422);
        assertThat(revision()).isEqualTo(1);
        form.putAll(Map.of("second", "kofi", "secondPassword", PASSWORD + "-kofi"));
        assertThat(ingrid.send(look + "/taken", form).statusCode()).isEqualTo(303);

        assertThat(revision()).isEqualTo(2);
        assertThat(ledger.history(Subject.works()).last(FilesTaken.class))
                .hasValueSatisfying(said -> assertThat(said.confirmedBy()).contains("W-1013"));
    }

    @Test
    @Order(10)
    void a_works_engineer_takes_no_people_and_somebody_else_sees_nothing_of_what_was_sent() {
        var folder = Folder.copyOf(Folder.SMALL)
                .replace("sheets/strip-bus12.yaml", "planned_minutes: 45", "planned_minutes: 50")
                .replace("people.csv", "Linh Tran,technician", "Linh Tran,technician;inspector");
        Browsing ingrid = Browsing.as("ingrid", FIRST_PASSWORD);
        String look = sent(ingrid, folder);

        assertThat(ingrid.page(look)).contains("You cannot take files that change people");
        assertThat(administrator().get(look).statusCode()).isEqualTo(404);
        assertThat(Browsing.as("kofi", PASSWORD + "-kofi").get("/setup/works").statusCode())
                .isEqualTo(403);
    }

    @Test
    @Order(11)
    void a_script_checks_takes_and_gets_the_same_files() {
        byte[] given = RestAssured.given()
                .auth()
                .preemptive()
                .basic("ingrid", FIRST_PASSWORD)
                .get("/api/v1/works")
                .asByteArray();
        assertThat(RestAssured.given()
                        .auth()
                        .preemptive()
                        .basic("ingrid", FIRST_PASSWORD)
                        .contentType(ZIP)
                        .body(given)
                        .post("/api/v1/works/check")
                        .jsonPath()
                        .getList("changes"))
                .isEmpty();
        Response nothing = RestAssured.given()
                .auth()
                .preemptive()
                .basic("ingrid", FIRST_PASSWORD)
                .contentType(ZIP)
                .body(given)
                .post("/api/v1/works/take");
        assertThat(nothing.statusCode()).isEqualTo(409);
        assertThat(nothing.asString()).contains("There is nothing to take");
    }

    @Test
    @Order(12)
    void two_people_swap_their_user_names_and_keep_their_passwords() {
        var folder = Folder.copyOf(Folder.SMALL)
                .replace("sheets/strip-bus12.yaml", "planned_minutes: 45", "planned_minutes: 50")
                .replace("people.csv", "W-1012,ingrid", "W-1012,kofi")
                .replace("people.csv", "W-1013,kofi", "W-1013,ingrid")
                .replace("people.csv", "Linh Tran,technician", "Linh Tran-Hale,technician;team-leader");
        Browsing administrator = administrator();
        String look = sent(administrator, folder);
        assertThat(administrator.page(look)).contains("technician, team-leader");

        assertThat(administrator.send(look + "/taken", administrator.form(look)).statusCode())
                .isEqualTo(303);

        assertThat(passwords.person("kofi", FIRST_PASSWORD)).contains("W-1012");
        assertThat(passwords.person("ingrid", PASSWORD + "-kofi")).contains("W-1013");
        assertThat(ledger.history(Subject.person("W-1003")).last(Engaged.class))
                .hasValueSatisfying(said -> assertThat(said.roles()).contains(Role.TEAM_LEADER));
        assertThat(administrator.page(sent(administrator, folder))).contains("Nothing would change");
        assertThat(verify.everything().sound()).isTrue();
    }

    private int revision() {
        return ledger.history(Subject.checkSheet("STRIP-BUS12"))
                .last(Released.class)
                .orElseThrow()
                .revision();
    }

    private Map<String, Object> filled(Browsing browsing) {
        Map<String, Object> form = new HashMap<>(browsing.form("/first-start"));
        form.putAll(Map.of(
                "code", code.code().toLowerCase(Locale.ROOT),
                "title", "Quay works",
                "zone", "Europe/London",
                "number", "W-0001",
                "user", "boss",
                "name", "Bo Ossington",
                "password", PASSWORD,
                "again", PASSWORD));
        return form;
    }

    private static Browsing administrator() {
        return Browsing.as("boss", PASSWORD);
    }

    private static String sent(Browsing browsing, Folder folder) {
        Response answer =
                browsing.send("/setup/works", browsing.form("/setup/works"), "works.zip", folder.packed(), ZIP);
        assertThat(answer.statusCode()).isEqualTo(303);
        return path(answer.header("Location"));
    }

    private static String path(String location) {
        return location.substring(location.indexOf("/setup/"));
    }

    private static WorksFiles read(byte[] packed) {
        return WorksZip.read(packed, VehicleFacts.PREDICATES).fold(files -> files, faults -> {
            throw new AssertionError(faults);
        });
    }
}
