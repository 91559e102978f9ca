package wainbook.book.telling;

import java.time.Instant;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import wainbook.page.Formats;
import wainbook.process.Releases;
import wainbook.process.Stage;
import wainbook.process.Station;
import wainbook.process.sheet.CheckItem;
import wainbook.station.StationSaying.About;
import wainbook.works.PersonInWords;

/** Names as the works has released them. Each is looked up once. */
public final class ReleasedNames implements Names {

    private final Releases releases;
    private final Formats formats;
    private final UnaryOperator<String> person;
    private final Map<String, String> people = new HashMap<>();
    private final Map<String, String> stages = new HashMap<>();
    private final Map<String, String> places = new HashMap<>();

    private ReleasedNames(Releases releases, ZoneId zone, UnaryOperator<String> person) {
        this.releases = releases;
        this.formats = new Formats(zone);
        this.person = person;
    }

    /** For pages: people by their names. */
    public static ReleasedNames withPeople(Releases releases, ZoneId zone) {
        return new ReleasedNames(releases, zone, PersonInWords::name);
    }

    /** For what leaves the works: people are numbers. */
    public static ReleasedNames withNumbers(Releases releases, ZoneId zone) {
        return new ReleasedNames(releases, zone, UnaryOperator.identity());
    }

    @Override
    public String item(About about) {
        return releases.sheet(about.sheet(), about.revision())
                .item(about.item())
                .map(CheckItem::title)
                .orElse(about.item());
    }

    @Override
    public String stage(String code) {
        return stages.computeIfAbsent(
                code, key -> releases.stage(key).map(Stage::title).orElse(key));
    }

    @Override
    public String place(String code) {
        return places.computeIfAbsent(
                code, key -> releases.station(key).map(Station::title).orElse(key));
    }

    @Override
    public String person(String number) {
        return people.computeIfAbsent(number, person);
    }

    @Override
    public String time(Instant at) {
        return formats.moment(at);
    }
}
