package wainbook.setup;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import wainbook.house.Cast;
import wainbook.works.signin.SignInRow;

/** A copy of the demo works with twenty faults of different sorts: all are named at their places, and nothing changes. */
@QuarkusTest
class TwentyPlantedFaultsTest {

    @Inject
    EntityManager tables;

    @BeforeAll
    static void everybodyIsThere() {
        Cast.assemble();
    }

    @Test
    void all_twenty_are_named_by_file_line_and_column_and_nothing_changes() {
        var folder = Folder.copyOf(Folder.DEMO);
        List<String> planted = plant(folder);
        assertThat(planted).hasSize(20).doesNotHaveDuplicates();
        Map<String, Object> before = everything();

        for (String act : List.of("check", "take")) {
            Response answer = Cast.ADMINISTRATOR
                    .asks()
                    .contentType("application/zip")
                    .body(folder.packed())
                    .post("/api/v1/works/" + act);
            assertThat(answer.statusCode()).isEqualTo(act.equals("take") ? 422 : 200);
            List<Map<String, String>> faults = answer.jsonPath().getList("faults");
            assertThat(faults)
                    .extracting(fault -> fault.get("file") + ":" + fault.get("line") + ":" + fault.get("column"))
                    .containsExactlyInAnyOrderElementsOf(planted);
            assertThat(faults)
                    .allSatisfy(fault -> assertThat(fault.get("found")).isNotBlank())
                    .allSatisfy(fault -> assertThat(fault.get("expected")).isNotBlank());
        }

        assertThat(everything()).isEqualTo(before);
    }

    private static List<String> plant(Folder folder) {
        List<String> planted = new ArrayList<>();
        planted.add(folder.plantCell("people.csv", 0, "roles", "spectator"));
        planted.add(folder.plantCell("locks.csv", 3, "number", folder.cell("locks.csv", 2, "number")));
        planted.add(folder.plantCell("people.csv", 4, "user", folder.cell("people.csv", 3, "user")));
        planted.add(folder.plantCell("competences.csv", 0, "level", "high"));
        planted.add(folder.plantCell("competences.csv", 1, "person", "NOBODY"));
        planted.add(folder.plantCell("competences.csv", 2, "to_day", "-30000"));
        planted.add(folder.plantCell("instruments.csv", 0, "kind", "crystal-ball"));
        planted.add(folder.plantCell("instruments.csv", 1, "upper", "-1"));
        planted.add(folder.plantCell("instruments.csv", 2, "lower", "low"));
        planted.add(folder.plantCell("stations.csv", 0, "stage", "paint"));
        planted.add(folder.plantCell("joints.csv", 0, "tool_kind", "hammer"));
        planted.add(folder.plantText("routes.yaml", "intake_sheet: (\"?[\\w.-]+\"?)", "\"NO-SHEET\""));
        planted.add(folder.plantText("routes.yaml", "check_sheet: (\"?[\\w.-]+\"?)", "\"NO-OTHER\""));
        planted.add(folder.plantText("works.yaml", "zone: (\"?[\\w/]+\"?)", "\"Europe/Nowhere\""));
        planted.add(folder.placeOf("works.yaml", "shifts:\\s*\\n(?:\\s*#.*\\n)*\\s*- (\\S)"));
        folder.plantText("works.yaml", "from: (\"[\\d:]+\")", "\"six\"");
        String plan = folder.fileWith("isolation-plans", "wait_minutes: \\d");
        planted.add(folder.plantText(plan, "wait_minutes: (\\d+)", "ten"));
        planted.add(folder.plantCell("locks.csv", 0, "owner", "NOBODY"));
        planted.add(folder.plantText(
                folder.fileWith("sheets", "applies_when: \""), "applies_when: (\"[^\"]+\")", "\"hairy\""));
        planted.add(folder.plantText(folder.fileWith("sheets", "joint: \""), "joint: (\"[^\"]+\")", "\"NO-JOINT\""));
        planted.add(folder.plantText(
                folder.fileWith("sheets", "instrument_kind: \""), "instrument_kind: (\"[^\"]+\")", "\"divining-rod\""));
        return planted;
    }

    /** How much stands on record and in the tables beside it. */
    private Map<String, Object> everything() {
        return QuarkusTransaction.requiringNew().call(() -> {
            var counts = new LinkedHashMap<String, Object>();
            for (String table :
                    List.of("entry", "stream", "person", "instrument", "person_name", "sign_in", "work_order")) {
                counts.put(
                        table,
                        tables.createNativeQuery("select count(*) from " + table)
                                .getSingleResult());
            }
            counts.put(
                    "signs in",
                    SignInRow.<SignInRow>listAll().stream()
                            .map(row -> row.userName + " " + row.person + " " + row.passwordHash)
                            .sorted()
                            .toList());
            return counts;
        });
    }
}
