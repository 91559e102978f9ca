package wainbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class CsvTest {

    @Test
    void quotes_what_needs_it() {
        assertThat(Csv.text(List.of("a", "b"), List.of(List.of("x,y", "say \"so\""))))
                .isEqualTo("a,b\n\"x,y\",\"say \"\"so\"\"\"\n");
    }

    @Test
    void a_cell_never_runs_as_a_formula() {
        assertThat(Csv.text(List.of("a"), List.of(List.of("=1+1"), List.of("-2"))))
                .isEqualTo("a\n\"'=1+1\"\n\"'-2\"\n");
    }
}
