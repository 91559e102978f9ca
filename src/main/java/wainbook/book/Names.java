package wainbook.book;

import wainbook.station.StationSaying.About;

/** How codes in the record are named for people. */
interface Names {
    String item(About about);

    String stage(String code);

    String place(String code);

    String person(String number);
}
