package wainbook.isolation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.Arrays;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wainbook.isolation.permit.Precaution;
import wainbook.isolation.permit.StopCause;
import wainbook.ledger.Kind;

class KeysTest {
    private final Properties text = text();

    @Test
    void every_refusal_state_step_and_precaution_has_its_words_and_no_word_is_left_over() {
        var wanted = Stream.of(
                        Guards.keys().stream(),
                        Permission.keys().stream(),
                        names("state.", State.values()),
                        names("step.", Step.values()),
                        names("precaution.", Precaution.values()),
                        names("danger.", Danger.values()),
                        names("stop.", StopCause.values()))
                .flatMap(keys -> keys)
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(new TreeSet<>(text.stringPropertyNames())).isEqualTo(wanted);
    }

    @Test
    void every_refusal_says_what_why_and_what_now() {
        Stream.concat(Guards.keys().stream(), Permission.keys().stream()).forEach(key -> {
            String said = new MessageFormat(text.getProperty(key)).format(new Object[] {"X"});
            assertThat(said.split("[.;] ", -1)).as(key).hasSizeGreaterThanOrEqualTo(3);
            assertThat(said).as(key).endsWith(".").doesNotContain("!", "'", "{");
        });
    }

    @Test
    void every_kind_has_a_step_an_effect_and_a_name_of_this_room() {
        var kinds = Set.of(IsolationSaying.class.getPermittedSubclasses());
        assertThat(Effects.kinds()).isEqualTo(kinds);
        assertThat(Arrays.stream(Step.values()).map(Step::kind))
                .hasSameSizeAs(kinds)
                .allMatch(kinds::contains)
                .doesNotHaveDuplicates();
        assertThat(Arrays.stream(IsolationSaying.class.getPermittedSubclasses())
                        .map(kind -> kind.getAnnotation(Kind.class).value()))
                .doesNotHaveDuplicates()
                .allMatch(name -> name.matches("isolation\\.[a-zA-Z]+/1"));
    }

    private static Stream<String> names(String prefix, Enum<?>... values) {
        return Arrays.stream(values).map(value -> prefix + value.name());
    }

    private static Properties text() {
        var text = new Properties();
        try (var in = KeysTest.class.getResourceAsStream("/messages/isolation.properties")) {
            text.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return text;
    }
}
