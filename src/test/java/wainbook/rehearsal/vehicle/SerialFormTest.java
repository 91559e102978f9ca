package wainbook.rehearsal.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.rehearsal.chance.Dice;

class SerialFormTest {

    @ParameterizedTest
    @ValueSource(strings = {"PK[0-9]{8}", "TM[0-9]{6}", "ZB14 [A-Z]{3}", "[A-Z]{2}-[0-9]{4}", "X"})
    void makes_texts_of_the_form(String form) {
        for (long seed = 0; seed < 50; seed++) {
            assertThat(SerialForm.of(form).text(Dice.of(seed))).matches(form);
        }
    }

    @Test
    void the_same_dice_make_the_same_text() {
        assertThat(SerialForm.of("PK[0-9]{8}").text(Dice.of(7, "pack")))
                .isEqualTo(SerialForm.of("PK[0-9]{8}").text(Dice.of(7, "pack")));
    }

    @Test
    void says_so_when_it_cannot_make_one() {
        assertThatThrownBy(() -> SerialForm.of("(A|B)+").text(Dice.of(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("(A|B)+");
    }
}
