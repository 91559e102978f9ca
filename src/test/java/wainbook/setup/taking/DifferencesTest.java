package wainbook.setup.taking;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wainbook.act.Reason;
import wainbook.isolation.IsolationSaying;
import wainbook.ledger.Decision;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.process.ProcessSaying;
import wainbook.process.VehicleFacts;
import wainbook.setup.Folder;
import wainbook.setup.files.WorksFiles;
import wainbook.setup.files.WorksZip;
import wainbook.works.WorksSaying;

/** What changed files would write into a works that took them before. */
class DifferencesTest {

    private static final String SPARE =
            "SPARE,Not asked for by any sheet,C,4,list,10,8,12,,,torque-setting,3,,false,,\n";

    private Folder folder;
    private Book book;

    @BeforeEach
    void aWorksThatTookItsFiles() {
        folder = Folder.copyOf(Folder.SMALL);
        folder.with("joints.csv", folder.texts().get("joints.csv") + SPARE);
        book = Book.of(files());
        book.later(30);
    }

    private WorksFiles files() {
        return WorksZip.read(folder.packed(), VehicleFacts.PREDICATES).fold(files -> files, faults -> {
            throw new AssertionError(faults);
        });
    }

    private List<String> changes() {
        return book.preview(files()).differences().changes().stream()
                .map(change -> change.part() + " " + change.key() + " " + change.sort()
                        + change.fields().stream()
                                .map(field -> " " + field.path() + ": " + field.was() + " → " + field.becomes())
                                .toList())
                .toList();
    }

    private List<String> said() {
        return book.take(files()).stream()
                .map(Decision.Line::saying)
                .map(Saying::getClass)
                .map(Class::getSimpleName)
                .toList();
    }

    private List<String> reasons(String who, boolean administrator) {
        return book.preview(files(), who, administrator).reasons().stream()
                .map(Reason::key)
                .toList();
    }

    @Test
    void a_changed_item_is_told_by_field_and_makes_the_next_revision_of_its_sheet_alone() {
        folder.replace("sheets/strip-bus12.yaml", "planned_minutes: 45", "planned_minutes: 50");

        assertThat(changes()).containsExactly("SHEETS STRIP-BUS12 CHANGED[ items/engine-out/planned_minutes: 45 → 50]");
        List<Decision.Line> lines = book.take(files());
        assertThat(lines).hasSize(1);
        assertThat(lines.get(0).subject()).isEqualTo(Subject.checkSheet("STRIP-BUS12"));
        assertThat(((ProcessSaying.Released) lines.get(0).saying()).revision()).isEqualTo(2);
        assertThat(changes()).as("taken once, it is on record").isEmpty();
    }

    @Test
    void a_changed_joint_releases_all_joints_in_the_next_revision() {
        folder.replace("joints.csv", "A,8,list,120,108,132", "A,8,list,125,110,140");

        assertThat(changes())
                .containsExactly("JOINTS PACK-MOUNT CHANGED[ target_nm: 120 → 125,  lower_nm: 108 → 110,"
                        + "  upper_nm: 132 → 140]");
        var released = (ProcessSaying.JointsReleased) book.take(files()).get(0).saying();
        assertThat(released.revision()).isEqualTo(2);
        assertThat(released.joints()).hasSize(files().joints().size());
    }

    @Test
    void a_changed_joint_that_no_tool_then_serves_is_refused_as_in_a_draft() {
        folder.replace("joints.csv", "A,8,list,120,108,132", "A,8,list,120,117,123");
        assertThat(reasons("setup", true)).containsExactly("process.noToolServes");

        folder.replace(
                "instruments.csv",
                "TW-120,torque-indicating,Indicating torque wrench 20-200 N·m,N·m,20,200,1.6",
                "TW-120,torque-indicating,Indicating torque wrench 20-200 N·m,N·m,20,200,0.8");
        assertThat(reasons("setup", true))
                .as("by the finer wrench that comes with it")
                .isEmpty();

        book.later(300);
        assertThat(reasons("setup", true))
                .as("when that wrench is past its day")
                .containsExactly("process.noToolCovers");
    }

    @Test
    void a_line_that_is_left_out_removes_nothing() {
        folder.replace("joints.csv", SPARE, "");
        folder.replace("locks.csv", "KY-08,vehicle_key,\n", "");

        assertThat(changes()).containsExactly("JOINTS SPARE STAYS[]", "LOCKS KY-08 STAYS[]");
        assertThat(said()).isEmpty();
        assertThat(book.record().givenOut().joints())
                .anyMatch(joint -> joint.code().equals("SPARE"));
    }

    @Test
    void a_joint_that_the_files_leave_out_stays_when_others_change() {
        folder.replace("joints.csv", SPARE, "");
        folder.replace("joints.csv", "C,12,list,10,8,12", "C,10,list,10,8,12");

        var released = (ProcessSaying.JointsReleased) book.take(files()).get(0).saying();
        assertThat(released.joints()).anyMatch(joint -> joint.code().equals("SPARE"));
    }

    @Test
    void an_instrument_is_calibrated_withdrawn_or_registered_anew_as_its_line_says() {
        folder.replace("instruments.csv", "1.8,-120,245,C-4401,", "1.8,20,385,C-5001,");
        assertThat(said()).containsExactly("Calibrated");
        folder.replace("instruments.csv", "C-5001,", "C-5001,Dropped");
        assertThat(said()).containsExactly("InstrumentWithdrawn");
        folder.replace("instruments.csv", "N·m,5,50,1.8", "N·m,5,40,1.8");
        assertThat(said()).containsExactly("InstrumentRegistered", "Calibrated", "InstrumentWithdrawn");
        assertThat(changes()).isEmpty();
    }

    @Test
    void an_instrument_that_the_works_withdrew_stays_so_until_a_newer_calibration() {
        book.say(Subject.instrument("TW-105"), WorksSaying.InstrumentWithdrawn.because("failed its check"));

        assertThat(changes()).isEmpty();

        folder.replace("instruments.csv", "1.8,-120,245,C-4401,", "1.8,29,394,C-5001,");
        assertThat(said()).containsExactly("Calibrated");
    }

    @Test
    void what_the_works_ended_is_not_brought_back() {
        book.say(Subject.person("W-1003"), new WorksSaying.Left("moved away"));
        book.say(Subject.person("W-1001"), new WorksSaying.CompetenceWithdrawn("HV", "near miss"));
        book.say(Subject.works(), new IsolationSaying.ItemRetired("LK-01", "broken"));

        assertThat(changes())
                .containsExactly(
                        "PEOPLE W-1003 ENDED[]",
                        "COMPETENCES W-1001 HV ENDED[]",
                        "COMPETENCES W-1003 HV ENDED[]",
                        "COMPETENCES W-1003 LIFTING ENDED[]",
                        "LOCKS LK-01 ENDED[]");
        assertThat(said()).isEmpty();
        WorksFiles given = book.record().givenOut();
        assertThat(given.people()).noneMatch(person -> person.number().equals("W-1003"));
        assertThat(given.locks()).noneMatch(lock -> lock.owner().equals(Optional.of("W-1003")));
    }

    @Test
    void a_competence_counts_its_days_from_the_first_day_of_the_works_and_not_from_today() {
        folder.replace("competences.csv", "W-1005,HV,1,-100,630", "W-1005,HV,2,10,740");

        var given = (WorksSaying.CompetenceGiven) book.take(files()).get(0).saying();
        assertThat(given.validFrom()).isEqualTo(LocalDate.of(2026, 3, 12));
        assertThat(given.level()).isEqualTo(2);
    }

    @Test
    void roles_are_given_and_a_name_is_said_anew() {
        folder.replace("people.csv", "Linh Tran,technician", "Linh Tran,technician;team-leader");
        folder.replace("people.csv", "Owen Pritchard", "Owen Pritchard-Hale");

        assertThat(said()).containsExactly("RolesGiven", "Engaged");
    }

    @Test
    void a_second_person_is_asked_for_the_process_and_not_for_the_rest() {
        folder.replace("competences.csv", "Course record 2101", "Course record 2201");
        assertThat(book.preview(files()).needsSecond()).isFalse();
        folder.replace("stages.csv", "Donor intake", "Donor intake and survey");
        assertThat(book.preview(files()).needsSecond()).isTrue();
        assertThat(new Book().preview(files()).needsSecond())
                .as("what comes first")
                .isFalse();
    }

    @Test
    void a_released_plan_does_not_change_under_its_revision() {
        folder.replace("isolation-plans/bus-12m.yaml", "wait_minutes: 10", "wait_minutes: 15");
        assertThat(reasons("setup", true)).containsExactly("setup.planRevision");
        folder.replace("isolation-plans/bus-12m.yaml", "revision: 1", "revision: 2");
        assertThat(reasons("setup", true)).isEmpty();
        assertThat(said()).containsExactly("PlanReleased");
    }

    @Test
    void a_lock_keeps_its_number_and_owner_for_good() {
        folder.replace("locks.csv", "LK-02,lock,W-1002", "LK-02,lock,W-1003");
        assertThat(reasons("setup", true)).containsExactly("setup.numberGivenOnce");
    }

    @Test
    void people_are_for_the_administrator_and_nobody_changes_their_own_line() {
        folder.replace("people.csv", "Ingrid Halvorsen,works-engineer", "Ingrid Halvorsen,works-engineer;inspector");
        assertThat(reasons("W-1012", false)).containsExactly("setup.ownLine", "setup.peopleByAdministrator");
        assertThat(reasons("W-1013", false)).containsExactly("setup.peopleByAdministrator");
        assertThat(reasons("W-1016", true)).isEmpty();
        assertThat(reasons("W-1012", true)).containsExactly("setup.ownLine");
    }

    @Test
    void a_user_name_has_one_owner() {
        folder.replace("people.csv", "W-1003,linh", "W-1003,tam");
        assertThat(reasons("setup", true)).isEmpty();
        book.take(files());
        folder.replace("people.csv", "W-1002,tomasz,Tomasz Lewicki,technician\n", "");
        folder.replace("competences.csv", "W-1002,HV,1,-300,430,Course record 2102\n", "");
        folder.replace("locks.csv", "LK-02,lock,W-1002\n", "");
        folder.replace("people.csv", "W-1003,tam", "W-1003,tomasz");
        assertThat(reasons("setup", true)).containsExactly("setup.userTaken");
    }

    @Test
    void the_fingerprint_is_that_of_the_changes() {
        folder.replace("stages.csv", "Donor intake", "Donor survey");
        String fingerprint = book.preview(files()).fingerprint();
        assertThat(book.preview(files()).fingerprint()).isEqualTo(fingerprint);
        folder.replace("stages.csv", "Donor survey", "Donor inspection");
        assertThat(book.preview(files()).fingerprint()).isNotEqualTo(fingerprint);
    }
}
