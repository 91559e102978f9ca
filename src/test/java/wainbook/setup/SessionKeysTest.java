package wainbook.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SessionKeysTest {

    @TempDir
    private Path data;

    @Test
    void a_restart_keeps_the_sessions_and_two_works_share_no_key() {
        assertThat(SessionKeys.in(data))
                .isEqualTo(SessionKeys.in(data))
                .isNotEqualTo(SessionKeys.in(data.resolve("b")));
    }

    @Test
    void form_tokens_have_no_key_since_with_one_each_page_opened_spoils_the_forms_of_the_others() {
        assertThat(SessionKeys.in(data)).containsOnlyKeys("quarkus.http.auth.session.encryption-key");
    }

    @Test
    void nobody_else_on_the_machine_reads_them() throws IOException {
        SessionKeys.in(data);
        assertThat(Files.getPosixFilePermissions(data.resolve("session-keys.properties")))
                .allSatisfy(permission -> assertThat(permission.name()).startsWith("OWNER"));
    }
}
