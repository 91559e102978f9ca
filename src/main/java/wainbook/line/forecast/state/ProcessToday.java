package wainbook.line.forecast.state;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import wainbook.process.Releases;
import wainbook.process.Route;
import wainbook.process.Station;
import wainbook.process.sheet.CheckSheet;

/** What a forecast asks of the process as it is released today. */
public interface ProcessToday {

    CheckSheet sheet(String code, int revision);

    /** The sheet in force for a stage of a route. */
    Optional<CheckSheet> inForce(String route, String stage);

    /** The stages of all routes and those given, in the works' own numbering. */
    List<TheLineNow.Post> posts(Collection<String> besides);

    /** As it is released. */
    record Released(Releases releases) implements ProcessToday {

        @Override
        public CheckSheet sheet(String code, int revision) {
            return releases.sheet(code, revision);
        }

        @Override
        public Optional<CheckSheet> inForce(String route, String stage) {
            return releases.leg(route, stage)
                    .flatMap(leg -> releases.sheetInForce(leg.checkSheet()))
                    .map(released -> released.sheet());
        }

        @Override
        public List<TheLineNow.Post> posts(Collection<String> besides) {
            List<String> passed = Stream.of(
                            releases.routes().stream()
                                    .flatMap(route -> route.legs().stream().map(Route.Leg::stage)),
                            besides.stream())
                    .flatMap(Function.identity())
                    .distinct()
                    .toList();
            return releases.stages().stream()
                    .filter(stage -> passed.contains(stage.code()))
                    .map(stage -> new TheLineNow.Post(
                            stage.code(),
                            stage.title(),
                            releases.stationsOf(stage.code()).stream()
                                    .map(Station::code)
                                    .toList()))
                    .toList();
        }
    }
}
