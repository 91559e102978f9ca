package wainbook.page.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.ledger.evidence.EvidenceFiles;

@QuarkusTest
@Tag("database")
class EvidencePageTest {

    private static final byte[] CONTENT = "%PDF-1.4 a report".getBytes(StandardCharsets.US_ASCII);

    @Inject
    EvidenceFiles files;

    @BeforeEach
    void the_cast_is_there() {
        Cast.assemble();
    }

    @Test
    void an_inspector_sees_the_very_bytes_that_were_handed_in_and_nothing_in_them_can_run() {
        EvidenceFile kept = files.keep(CONTENT, "application/pdf");
        Response answer = Browsing.as(Cast.INSPECTOR).get("/evidence/" + kept.sha256());
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.asByteArray()).isEqualTo(CONTENT);
        assertThat(answer.contentType()).startsWith("application/pdf");
        assertThat(answer.headers().getValues("Content-Security-Policy"))
                .anyMatch(policy -> policy.contains("sandbox"));
        assertThat(answer.header("X-Content-Type-Options")).isEqualTo("nosniff");
    }

    @Test
    void a_file_that_nobody_handed_in_is_not_found() {
        assertThat(Browsing.as(Cast.INSPECTOR)
                        .get("/evidence/" + "0".repeat(64))
                        .statusCode())
                .isEqualTo(404);
        assertThat(Browsing.as(Cast.INSPECTOR).get("/evidence/nothing").statusCode())
                .isEqualTo(404);
    }
}
