package wainbook.book.telling;

import java.time.Instant;
import wainbook.station.StationSaying.About;

/** How codes and times in the record are written for people. */
public interface Names {
    String item(About about);

    String stage(String code);

    String place(String code);

    String person(String number);

    /** The works' local time. */
    String time(Instant at);
}
