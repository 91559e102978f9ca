package wainbook.works.shift;

import jakarta.enterprise.context.Dependent;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Named;
import wainbook.page.Formats;

/** Pages write times as the works' clock shows them. */
@Dependent
class Times {

    @Produces
    @Named("formats")
    Formats formats(WorksDay day) {
        return new Formats(day.zone());
    }
}
