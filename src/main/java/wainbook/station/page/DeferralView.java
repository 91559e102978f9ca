package wainbook.station.page;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wainbook.act.Reason;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.station.StationSaying.Bar;
import wainbook.works.Role;

/**
 * What the page of giving an item to a later stage shows: both ways, one of them with its form.
 *
 * @param title of the item
 * @param open the way whose form is drawn; absent where neither can be gone by this person
 */
public record DeferralView(
        String order,
        String place,
        String item,
        String title,
        boolean dangerous,
        List<Branch> ways,
        Optional<Way> open,
        Filled filled,
        List<Option> stages,
        List<Option> people) {

    /** The ways in which an item is given to a later stage, and who may. */
    public enum Way {
        RE_SEQUENCE("re-sequenced"),
        CARRY_OVER("carried-over"),
        HAND_ON("handed-on");

        private final String path;

        Way(String path) {
            this.path = path;
        }

        public String path() {
            return path;
        }

        Set<Role> roles() {
            return switch (this) {
                case RE_SEQUENCE -> Set.of(Role.WORKS_ENGINEER);
                case CARRY_OVER -> Set.of(Role.TEAM_LEADER, Role.LINE_MANAGER, Role.WORKS_ENGINEER);
                case HAND_ON -> Set.of(Role.LINE_MANAGER, Role.WORKS_ENGINEER, Role.QUALITY_ENGINEER);
            };
        }

        static Optional<Way> of(String word) {
            return Arrays.stream(values()).filter(way -> way.path.equals(word)).findFirst();
        }

        public String title() {
            return Words.of("station.way." + name());
        }

        public String text() {
            return Words.of("station.wayText." + name());
        }

        String who() {
            return roles().stream()
                    .sorted()
                    .map(role -> Words.of("works." + role.word()))
                    .collect(Collectors.joining(", "));
        }
    }

    /** A way, and what stands against this person’s going it. */
    public record Branch(Way way, List<Reason> against) {
        public boolean free() {
            return against.isEmpty();
        }
    }

    public List<Option> bars() {
        return Arrays.stream(Bar.values())
                .map(bar -> new Option(bar.name(), Words.of("station.bar." + bar.name())))
                .toList();
    }

    public boolean ticked(String bar) {
        return filled.value(bar).equals("yes");
    }

    public boolean drawn(Branch branch) {
        return open.filter(way -> way == branch.way()).isPresent();
    }

    public String station() {
        return "/station/" + order + "?item=" + item;
    }

    public String path() {
        return "/station/" + order + "/" + item + "/later";
    }
}
