package wainbook.safety.page.view;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.page.Words;
import wainbook.process.Releases;
import wainbook.process.Station;

/** Says where something was. */
public record Titles(Releases releases) {

    String station(String code) {
        return releases.station(code).map(Station::title).orElse(code);
    }

    /** The vehicle, the station, both, or that nobody said. */
    public String where(Optional<String> order, Optional<String> station) {
        String both = Stream.concat(order.stream(), station.map(this::station).stream())
                .collect(Collectors.joining(", "));
        return both.isEmpty() ? Words.of("safety.placeNotSaid") : both;
    }
}
