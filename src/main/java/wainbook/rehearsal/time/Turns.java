package wainbook.rehearsal.time;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Several who act beside each other in one order of time. Each is a piece of plain code on a thread of its own, but only one
 * of them runs at a time: whoever's clock comes next, and of two at the same time whoever was named first.
 */
public final class Turns {

    /** Ends a player's part at the moment at which its clock would have gone on. */
    public static final class Over extends RuntimeException {
        private static final long serialVersionUID = 1;

        Over() {
            super("the play is over", null, false, false);
        }
    }

    /** The time that all look at. */
    public interface Time {

        /** Lets it come to this; false if nothing more is to happen. */
        boolean comes(Instant time);
    }

    /** What surrounds whatever a player does between two looks at the clock. */
    public interface Surroundings {
        void enter();

        void leave();
    }

    private final Surroundings surroundings;
    private final List<Player> players = new ArrayList<>();

    public Turns(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    /** @param part what this player does, by the clock that it is given; it may go on for ever */
    public void add(String name, Instant from, Consumer<PlayedClock> part) {
        players.add(new Player(name, from, part, surroundings));
    }

    /** Plays until a time, or until nothing more is to happen. A part that breaks ends the play. */
    public void play(Instant until, Time time) {
        players.forEach(Player::start);
        try {
            for (Optional<Player> next = next(); next.isPresent(); next = next()) {
                Player player = next.get();
                if (player.at().isAfter(until) || !time.comes(player.at())) {
                    return;
                }
                player.turn();
            }
        } finally {
            players.forEach(Player::end);
        }
    }

    private Optional<Player> next() {
        return players.stream().filter(Player::acts).min(Comparator.comparing(Player::at));
    }
}
