package wainbook.process.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.process.ProcessSaying;
import wainbook.process.ProcessSaying.DraftDropped;
import wainbook.process.ProcessSaying.DraftKept;
import wainbook.process.ProcessSaying.DraftProposed;
import wainbook.process.ProcessSaying.Released;
import wainbook.process.Stage;
import wainbook.process.VehicleFacts;
import wainbook.process.rule.Known;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckSheet;
import wainbook.process.sheet.Condition;
import wainbook.works.Role;

/** The whole life of a draft: every state, every act, everybody who may ask. No database, no clock. */
class DraftLifeTest {

    private static final About ABOUT = About.sheet("FIT");
    private static final String AUTHOR = "1001";
    private static final String SECOND = "1002";
    private static final String STRANGER = "1003";
    private static final Instant START = Instant.parse("2026-03-02T06:00:00Z");

    /** Where a sheet's draft can be. */
    enum State {
        NEW_WORKS(""),
        IN_FORCE("r1"),
        DRAFT("r1 k2"),
        FAULTY("r1 kf"),
        SAME("r1 k1"),
        PROPOSED("r1 k2 p"),
        FAULTY_SINCE_PROPOSED("r1 kf p"),
        OVERTAKEN("r1 k2 p r3"),
        BY_BOTH("r1 K2 k2 p"),
        DROPPED("r1 k2 d"),
        RELEASED("r1 k2 p R2"),
        FIRST_DRAFT("k0"),
        FIRST_PROPOSED("k0 p");

        private final String words;

        State(String words) {
            this.words = words;
        }

        List<String> story() {
            return Stream.of(words.split(" ")).filter(word -> !word.isEmpty()).toList();
        }
    }

    /** What may be asked for. */
    enum Act {
        KEEP,
        PROPOSE,
        RELEASE,
        DROP
    }

    /** Each line: state, act, who, and the rules in the way; none stands for done. Unnamed combinations cannot be. */
    static Stream<Arguments> lines() {
        return """
                NEW_WORKS              KEEP     AUTHOR    -
                NEW_WORKS              PROPOSE  AUTHOR    noDraft
                NEW_WORKS              RELEASE  SECOND    noDraft
                NEW_WORKS              DROP     AUTHOR    noDraft
                IN_FORCE               KEEP     AUTHOR    -
                IN_FORCE               KEEP     SECOND    -
                IN_FORCE               PROPOSE  AUTHOR    noDraft
                IN_FORCE               RELEASE  SECOND    noDraft
                IN_FORCE               DROP     SECOND    noDraft
                DRAFT                  KEEP     AUTHOR    -
                DRAFT                  KEEP     SECOND    -
                DRAFT                  PROPOSE  AUTHOR    -
                DRAFT                  PROPOSE  SECOND    notYourDraft
                DRAFT                  RELEASE  AUTHOR    notProposed ownDraft
                DRAFT                  RELEASE  SECOND    notProposed
                DRAFT                  DROP     AUTHOR    -
                DRAFT                  DROP     SECOND    -
                FAULTY                 KEEP     AUTHOR    -
                FAULTY                 PROPOSE  AUTHOR    unknownStage
                FAULTY                 RELEASE  SECOND    notProposed unknownStage
                SAME                   PROPOSE  AUTHOR    nothingChanged
                SAME                   RELEASE  SECOND    notProposed nothingChanged
                PROPOSED               KEEP     AUTHOR    -
                PROPOSED               KEEP     SECOND    -
                PROPOSED               PROPOSE  AUTHOR    proposedAlready
                PROPOSED               PROPOSE  SECOND    proposedAlready notYourDraft
                PROPOSED               RELEASE  AUTHOR    ownDraft
                PROPOSED               RELEASE  SECOND    -
                PROPOSED               DROP     SECOND    -
                FAULTY_SINCE_PROPOSED  RELEASE  SECOND    unknownStage
                OVERTAKEN              KEEP     AUTHOR    -
                OVERTAKEN              PROPOSE  AUTHOR    proposedAlready baseChanged
                OVERTAKEN              RELEASE  SECOND    baseChanged
                OVERTAKEN              RELEASE  AUTHOR    ownDraft baseChanged
                BY_BOTH                RELEASE  AUTHOR    ownDraft
                BY_BOTH                RELEASE  SECOND    ownDraft
                DROPPED                KEEP     SECOND    -
                DROPPED                RELEASE  SECOND    noDraft
                RELEASED               KEEP     AUTHOR    -
                RELEASED               RELEASE  SECOND    noDraft
                FIRST_DRAFT            KEEP     SECOND    -
                FIRST_DRAFT            PROPOSE  AUTHOR    -
                FIRST_DRAFT            RELEASE  SECOND    notProposed
                FIRST_PROPOSED         RELEASE  SECOND    -
                FIRST_PROPOSED         RELEASE  AUTHOR    ownDraft
                """.lines().map(line -> line.strip().split("\\s+", 4)).map(words -> Arguments.of(
                State.valueOf(words[0]), Act.valueOf(words[1]), words[2].equals("AUTHOR") ? AUTHOR : SECOND, words[3]));
    }

    @ParameterizedTest
    @MethodSource("lines")
    void an_act_is_done_or_refused_by_these_rules(State state, Act act, String who, String rules) {
        List<String> expected = rules.equals("-") ? List.of() : List.of(rules.split(" "));
        assertThat(keys(against(state, act, who, Role.WORKS_ENGINEER))).containsExactlyElementsOf(expected);
    }

    @ParameterizedTest
    @EnumSource
    void nobody_without_the_role_does_anything_in_any_state(State state) {
        for (Act act : Act.values()) {
            for (Role role : Role.values()) {
                boolean may = role == Role.WORKS_ENGINEER || role == Role.QUALITY_ENGINEER;
                List<String> keys = keys(against(state, act, STRANGER, role));
                assertThat(keys.contains("draftRole"))
                        .as(state + " " + act + " " + role)
                        .isEqualTo(!may);
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void whoever_has_not_seen_the_draft_as_it_is_changes_nothing(State state) {
        DraftRules rules = rules(state, SECOND, Role.QUALITY_ENGINEER);
        long unseen = rules.revisions().seen() + 1;
        assertThat(keys(rules.againstKeeping(unseen, rules.revisions().revision())))
                .contains("draftChangedSince");
        assertThat(rules.againstProposing(unseen)).isNotEmpty();
        assertThat(rules.againstReleasing(unseen)).isNotEmpty();
        assertThat(rules.againstDropping(unseen)).isNotEmpty();
    }

    /** In no state that any six acts lead to can a person release what they wrote in. */
    @Test
    void no_way_of_six_acts_lets_an_author_release() {
        List<List<String>> stories = List.of(List.of("r1"));
        int released = 0;
        for (int step = 0; step < 6; step++) {
            List<List<String>> longer = new ArrayList<>();
            for (List<String> story : stories) {
                for (String said : List.of("k2", "K2", "k3", "p", "d", "r3")) {
                    longer.add(and(story, said));
                }
            }
            stories = longer;
        }
        for (List<String> story : stories) {
            Revisions revisions = Revisions.of(history(story), ABOUT);
            for (String who : List.of(AUTHOR, SECOND)) {
                var rules = new DraftRules(revisions, surroundings(), who, List.of(Role.WORKS_ENGINEER));
                if (rules.againstReleasing(revisions.seen()).isEmpty()) {
                    released++;
                    assertThat(wroteInWhatStands(story, who))
                            .as(story + " by " + who)
                            .isFalse();
                }
            }
        }
        assertThat(released).as("ways that end in a release by somebody").isPositive();
    }

    @Test
    void a_change_takes_the_proposal_back() {
        assertThat(Revisions.of(history(List.of("r1", "k2", "p", "k3")), ABOUT).draft())
                .get()
                .extracting(Revisions.Kept::proposed)
                .isEqualTo(Optional.empty());
    }

    @Test
    void a_release_ends_the_draft_and_counts_on() {
        Revisions revisions = Revisions.of(history(List.of("r1", "k2", "p", "R2")), ABOUT);
        assertThat(revisions.draft()).isEmpty();
        assertThat(revisions.revision()).isEqualTo(2);
        assertThat(revisions.authors()).isEmpty();
        assertThat(revisions.version(1)).map(Revisions.Version::what).contains(draft("1", "fitting"));
    }

    @Test
    void a_draft_overtaken_by_a_release_goes_on_from_it_when_its_author_takes_it_there() {
        Revisions overtaken = Revisions.of(history(List.of("r1", "k2", "p", "r3")), ABOUT);
        var rules = new DraftRules(overtaken, surroundings(), SECOND, List.of(Role.QUALITY_ENGINEER));
        assertThat(rules.againstKeeping(overtaken.seen(), 2)).isEmpty();
        assertThat(keys(rules.againstKeeping(overtaken.seen(), 7))).containsExactly("baseChanged");
    }

    @Test
    void a_draft_is_released_as_the_next_revision() {
        Revisions proposed = Revisions.of(history(State.PROPOSED.story()), ABOUT);
        assertThat(proposed.draft().orElseThrow().what().sayings(proposed))
                .containsExactly(new Released(((SheetDraft) draft("2", "fitting")).sheet(), 2));
    }

    private static List<String> and(List<String> story, String said) {
        var longer = new ArrayList<>(story);
        longer.add(said);
        return longer;
    }

    /** Told from the story alone, without the class under test. */
    private static boolean wroteInWhatStands(List<String> story, String who) {
        boolean wrote = false;
        String stands = "";
        for (String said : story) {
            if (said.startsWith("k") || said.startsWith("K")) {
                stands = said.substring(1);
            }
            if (said.equals("d") || said.equals("r" + stands)) {
                wrote = false;
                stands = "";
            } else if (said.startsWith("k") || said.startsWith("K")) {
                wrote |= who.equals(said.startsWith("k") ? AUTHOR : SECOND);
            }
        }
        return wrote;
    }

    private static List<Reason> against(State state, Act act, String who, Role role) {
        DraftRules rules = rules(state, who, role);
        long seen = rules.revisions().seen();
        return switch (act) {
            case KEEP -> rules.againstKeeping(seen, rules.revisions().revision());
            case PROPOSE -> rules.againstProposing(seen);
            case RELEASE -> rules.againstReleasing(seen);
            case DROP -> rules.againstDropping(seen);
        };
    }

    private static DraftRules rules(State state, String who, Role role) {
        return new DraftRules(Revisions.of(history(state.story()), ABOUT), surroundings(), who, List.of(role));
    }

    private static List<String> keys(List<Reason> reasons) {
        return reasons.stream()
                .map(reason -> reason.key().replace("process.", ""))
                .toList();
    }

    private static Surroundings surroundings() {
        return new Surroundings(
                new Known(List.of(), Set.of("fitting"), Set.of(), VehicleFacts.PREDICATES),
                List.of(),
                List.of(new Stage("fitting", 1, "Fitting")),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                kind -> List.of());
    }

    /** r: imported, k: kept by the author, K: kept by the second, R: released, p: proposed, d: dropped. */
    private static History history(List<String> story) {
        Subject subject = ABOUT.subject();
        var entries = new ArrayList<Entry>();
        int revision = 0;
        for (String said : story) {
            String which = said.substring(1);
            int base = revision;
            Saying saying = switch (said.charAt(0)) {
                case 'r', 'R' -> {
                    revision++;
                    yield new Released(((SheetDraft) draft(which, "fitting")).sheet(), revision);
                }
                case 'k', 'K' -> new DraftKept(draft(which, which.equals("f") ? "nowhere" : "fitting"), base);
                case 'p' -> new DraftProposed(ABOUT);
                default -> new DraftDropped(ABOUT);
            };
            String who = said.equals("r1") || said.equals("r3") ? "setup" : said.startsWith("k") ? AUTHOR : SECOND;
            int number = entries.size() + 1;
            entries.add(new Entry(
                    new UUID(1, number),
                    subject,
                    number,
                    Moment.of(who, START.plusSeconds(number)),
                    "hash " + number,
                    (ProcessSaying) saying));
        }
        return new History(subject, entries);
    }

    private static Drafted draft(String words, String stage) {
        var item = new CheckItem(
                "frame",
                "Look over the frame " + words,
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
                1,
                Optional.empty());
        return new SheetDraft(new CheckSheet("FIT", "Fitting", List.of(item), stage));
    }
}
