package wainbook.station.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wainbook.matter.MatterSaying.NoConcession;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.BeyondConcession;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.Condition;
import wainbook.process.sheet.Limits;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.Measured;
import wainbook.station.StationSaying.Verdict;

class NonconformityRulesTest {

    @ParameterizedTest
    @EnumSource(BeyondConcession.class)
    void no_concession_for_what_an_item_says_it_belongs_to(BeyondConcession belongs) {
        assertThat(NonconformityRules.noConcession(item(Optional.of(belongs)), measured("11")))
                .contains(NoConcession.valueOf(belongs.name()));
    }

    @Test
    void a_works_limit_may_be_conceded_and_a_legal_one_never() {
        assertThat(NonconformityRules.noConcession(item(Optional.empty()), measured("11")))
                .isEmpty();
        assertThat(NonconformityRules.noConcession(item(Optional.empty()), measured("21")))
                .contains(NoConcession.LEGAL_LIMIT);
        assertThat(NonconformityRules.noConcession(item(Optional.of(BeyondConcession.STEERING)), measured("21")))
                .contains(NoConcession.LEGAL_LIMIT);
    }

    /** Outside the works' limit of 10 and, above 20, of the legal one. */
    private static Measured measured(String reading) {
        return new Measured(
                new About("fitting", "FIT", 1, "play", List.of()),
                new Basis(Condition.NONE, Optional.empty(), Optional.empty()),
                new BigDecimal(reading),
                "mm",
                Optional.of(Limits.atMost(new BigDecimal("10"))),
                Optional.of(Limits.atMost(new BigDecimal("20"))),
                Verdict.FAIL);
    }

    private static CheckItem item(Optional<BeyondConcession> belongs) {
        return new CheckItem(
                "play",
                "Measure the play",
                new Ask.Photograph(),
                Condition.NONE,
                Optional.empty(),
                Optional.empty(),
                5,
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                3,
                belongs);
    }
}
