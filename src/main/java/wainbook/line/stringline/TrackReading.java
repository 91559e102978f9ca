package wainbook.line.stringline;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.engineering.flow.forecast.outcome.StageTimes;
import wainbook.gate.past.Stay;
import wainbook.gate.past.VehicleWay;
import wainbook.line.forecast.LineForecast;
import wainbook.line.forecast.OddsInWords;
import wainbook.line.forecast.state.Calendar;
import wainbook.line.forecast.state.OnHand;
import wainbook.line.forecast.state.TheLineNow;
import wainbook.line.stringline.Track.Band;
import wainbook.line.stringline.Track.Due;
import wainbook.line.stringline.Track.Held;
import wainbook.line.stringline.Track.Step;
import wainbook.works.shift.Shifts;

/** Puts what is recorded of a vehicle together with what is forecast. */
record TrackReading(LineForecast forecast, Shifts shifts, Instant now) {

    Track of(VehicleWay way) {
        return track(way, List.of());
    }

    /** @param takt in working minutes; without one there is no plan */
    Track withPlan(VehicleWay way, Optional<Integer> takt) {
        return track(way, takt.map(minutes -> planned(way, minutes)).orElse(List.of()));
    }

    private Track track(VehicleWay way, List<Due> planned) {
        Optional<LineForecast.Of> found = forecast.vehicles().stream()
                .filter(one -> one.vehicle().order().equals(way.order()))
                .findFirst();
        return new Track(
                way.order(),
                way.kind(),
                way.stays().stream()
                        .filter(stay -> stay.onLine() || stay.inBay())
                        .map(TrackReading::stay)
                        .toList(),
                way.holds().stream()
                        .map(hold -> new Held(hold.from(), hold.to().orElse(now)))
                        .toList(),
                found.map(this::ahead).orElse(List.of()),
                planned,
                found.filter(LineForecast.Of::missesProbably).isPresent(),
                found.map(one -> OddsInWords.of(one.odds())));
    }

    private static Track.Stay stay(Stay stay) {
        return new Track.Stay(
                stay.onLine() ? stay.stage() : Optional.empty(), stay.place(), stay.arrived(), stay.left());
    }

    /** Only the stages that it has a sheet for: through the others it only passes. */
    private List<Step> ahead(LineForecast.Of one) {
        return one.outlook().stages().stream()
                .filter(times -> passes(one.vehicle(), times))
                .map(this::step)
                .toList();
    }

    private boolean passes(OnHand vehicle, StageTimes times) {
        return vehicle.plannedMinutes().containsKey(post(times).stage());
    }

    private TheLineNow.Post post(StageTimes times) {
        return forecast.line().posts().get(times.stage());
    }

    private Step step(StageTimes times) {
        Calendar calendar = forecast.line().calendar();
        return new Step(
                post(times).stage(),
                calendar.at(times.into().median()),
                new Band(
                        calendar.at(times.outOf().tenth()),
                        calendar.at(times.outOf().median()),
                        calendar.at(times.outOf().ninetieth())));
    }

    /** A takt for each station of each stage on its route, from when it came onto the line. */
    private List<Due> planned(VehicleWay way, int takt) {
        var planned = new ArrayList<Due>();
        Optional<Instant> at = way.began();
        for (TheLineNow.Post post : posts(way).toList()) {
            Duration here =
                    Duration.ofMinutes((long) takt * Math.max(1, post.stations().size()));
            at = at.flatMap(from -> shifts.after(from, here));
            at.ifPresent(leaves -> planned.add(new Due(post.stage(), leaves)));
        }
        return planned;
    }

    private Stream<TheLineNow.Post> posts(VehicleWay way) {
        return forecast.line().posts().stream()
                .filter(post -> way.ordered().stages().contains(post.stage()));
    }
}
