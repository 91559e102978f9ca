package wainbook.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import java.util.List;

/** The pages that belong to no other room. */
@CheckedTemplate(basePath = "page", defaultName = CheckedTemplate.ELEMENT_NAME)
public final class Pages {

    private Pages() {}

    public static native TemplateInstance problem(Trouble trouble);

    public static native TemplateInstance signIn(SignIn signIn);

    /** What every page says for a while. */
    public static native TemplateInstance announcements(List<Announcement.Said> said);

    static native TemplateInstance looks(Looks looks);
}
