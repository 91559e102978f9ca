package wainbook.engineering.flow.forecast.model;

/**
 * A stage of the line.
 *
 * @param name tells its random numbers from those of others: it stays the same from one forecast to the next
 * @param stations side by side, at least 1; vehicles keep their order
 * @param placesAfter between this stage and the next
 * @param transportMinutes to the next stage, while anybody on the line works
 * @param working when its stations work, with their down time already cut out
 * @param signing when those who sign its gate are there
 * @param signature from work done to the gate signed, in minutes of {@code signing}
 * @param refusal chance that the gate is refused, each time it is presented, from 0 up to but not 1
 * @param again work after a refusal, in minutes of {@code working}
 * @param pulses of a paced line that a vehicle stays for at least
 */
public record Stage(
        String name,
        int stations,
        int placesAfter,
        double transportMinutes,
        WorkingTime working,
        WorkingTime signing,
        Minutes signature,
        double refusal,
        Minutes again,
        int pulses) {

    public Stage {
        if (stations < 1 || placesAfter < 0 || !(transportMinutes >= 0) || !(refusal >= 0 && refusal < 1)) {
            throw new IllegalArgumentException("no stage is like " + name);
        }
    }

    /** One station, no place behind it, gates signed as soon as the work is done. */
    public static Stage of(String name, WorkingTime working) {
        return new Stage(name, 1, 0, 0, working, working, Minutes.NONE, 0, Minutes.NONE, 1);
    }

    public Stage withStations(int several) {
        return new Stage(
                name, several, placesAfter, transportMinutes, working, signing, signature, refusal, again, several);
    }

    /** With one station more, at which vehicles stay no longer than at the others. */
    public Stage withOneStationMore() {
        return new Stage(
                name, stations + 1, placesAfter, transportMinutes, working, signing, signature, refusal, again, pulses);
    }

    public Stage withPlacesAfter(int places) {
        return new Stage(name, stations, places, transportMinutes, working, signing, signature, refusal, again, pulses);
    }

    public Stage withWorking(WorkingTime other) {
        return new Stage(
                name, stations, placesAfter, transportMinutes, other, signing, signature, refusal, again, pulses);
    }

    public Stage withTransport(double minutes) {
        return new Stage(name, stations, placesAfter, minutes, working, signing, signature, refusal, again, pulses);
    }

    public Stage withSignature(WorkingTime signers, Minutes wait) {
        return new Stage(name, stations, placesAfter, transportMinutes, working, signers, wait, refusal, again, pulses);
    }

    public Stage withRefusal(double chance, Minutes work) {
        return new Stage(
                name, stations, placesAfter, transportMinutes, working, signing, signature, chance, work, pulses);
    }
}
