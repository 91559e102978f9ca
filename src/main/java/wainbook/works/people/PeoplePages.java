package wainbook.works.people;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The pages about people. */
@CheckedTemplate(basePath = "works", defaultName = CheckedTemplate.ELEMENT_NAME)
final class PeoplePages {

    private PeoplePages() {}

    static native TemplateInstance people(PeopleViews.Listed list);

    static native TemplateInstance matrix(Matrix matrix);

    static native TemplateInstance engage(PeopleViews.Engaging view);

    static native TemplateInstance person(PeopleViews.One view);
}
