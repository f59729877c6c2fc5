package thrumwright.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import thrumwright.measure.Phrases;
import thrumwright.piece.ClassMember;
import thrumwright.piece.ClassSet;

/** What the members of a class are called in its lists: each by a name that no other has. */
public final class MemberNames {
    /** About three lines of a list, so that no row grows higher than a page. */
    private static final int MOST_LETTERS = 200;

    private final List<String> names;
    private final Phrases phrases;

    private MemberNames(List<String> names, Phrases phrases) {
        this.names = names;
        this.phrases = phrases;
    }

    public static MemberNames of(ClassSet set, Locale locale) {
        Phrases phrases = Phrases.of("thrumwright.sheet.class", locale);
        List<String> typed =
                set.members().stream().map(ClassMember::name).map(String::strip).toList();
        List<String> names = new ArrayList<>();
        for (int i = 0; i < typed.size(); i++) {
            names.add(typed.get(i).isEmpty() ? phrases.say("member", Map.of("number", i + 1)) : typed.get(i));
        }
        for (int i = 0; i < typed.size(); i++) {
            if (Collections.frequency(names, names.get(i)) > 1) {
                twins(names, names.get(i), phrases);
            }
        }
        return new MemberNames(names, phrases);
    }

    /** Those who share a name are told apart by their numbers. */
    private static void twins(List<String> names, String name, Phrases phrases) {
        for (int i = 0; i < names.size(); i++) {
            if (names.get(i).equals(name)) {
                names.set(i, phrases.say("member.twin", Map.of("name", name, "number", i + 1)));
            }
        }
    }

    public int count() {
        return names.size();
    }

    /** @param index from 0 */
    public String name(int index) {
        return names.get(index);
    }

    /** Members that are named together, and their names in one text. */
    record Group(List<Integer> members, String text) {}

    /** Names of some members in as many texts as are needed to keep each short; “every loom” if they are all. */
    List<Group> groups(List<Integer> members) {
        if (members.size() == names.size()) {
            return List.of(new Group(List.copyOf(members), phrases.say("everyone")));
        }
        List<Group> groups = new ArrayList<>();
        List<Integer> some = new ArrayList<>();
        int letters = 0;
        for (int member : members) {
            letters += name(member).length() + 2;
            if (letters > MOST_LETTERS && !some.isEmpty()) {
                groups.add(group(some));
                some.clear();
                letters = name(member).length() + 2;
            }
            some.add(member);
        }
        groups.add(group(some));
        return groups;
    }

    private Group group(List<Integer> members) {
        return new Group(
                List.copyOf(members),
                String.join(", ", members.stream().map(this::name).toList()));
    }

    /** A sentence of some members, or of the class as a whole, in as many texts as are needed to keep each short. */
    public List<String> said(List<Integer> members, String sentence) {
        if (members.isEmpty()) {
            return List.of(sentence);
        }
        return groups(members).stream()
                .map(group -> phrases.say("finding", Map.of("members", capital(group.text()), "sentence", sentence)))
                .toList();
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
