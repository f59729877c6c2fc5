package thrumwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Members are a map in order, however many they are, and each value of a document knows where it stands. */
class MembersTest {
    @Test
    void areAMapInOrder() {
        Random random = new Random(3);
        for (int round = 0; round < 200; round++) {
            Map<String, Node> map = new LinkedHashMap<>();
            Members members = new Members();
            for (int i = random.nextInt(30); i > 0; i--) {
                String name = Integer.toString(random.nextInt(40), 2);
                Node node = Node.Num.of(i);
                assertThat(members.at(name) >= 0).isEqualTo(map.containsKey(name));
                if (map.putIfAbsent(name, node) == null) {
                    members.add(name, node);
                }
            }
            assertThat(members).isEqualTo(map);
            assertThat(new ArrayList<>(members.keySet())).isEqualTo(new ArrayList<>(map.keySet()));
            for (int from = 0; from < members.size(); from++) {
                for (int at = 0; at < members.size(); at++) {
                    assertThat(members.at(members.name(at), from)).isEqualTo(at);
                }
            }
        }
    }

    @Test
    void everyValueStandsWhereTheParserFindsIt() throws Exception {
        for (String name : BuiltIn.DEMO.names()) {
            String text = BuiltIn.DEMO.text(name);
            List<Node.Spot> spots = new ArrayList<>();
            collect(Json.read(text), spots);
            assertThat(spots).as(name).isEqualTo(parsers(text)).hasSizeGreaterThan(50);
        }
    }

    private static void collect(Node node, List<Node.Spot> spots) {
        spots.add(node.spot());
        if (node instanceof Node.Obj object) {
            object.fields().values().forEach(each -> collect(each, spots));
        } else if (node instanceof Node.Arr array) {
            array.items().forEach(each -> collect(each, spots));
        }
    }

    private static List<Node.Spot> parsers(String text) throws IOException {
        List<Node.Spot> spots = new ArrayList<>();
        try (JsonParser parser = new JsonFactory().createParser(text)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if (token.isStructStart() || token.isScalarValue()) {
                    JsonLocation at = parser.currentTokenLocation();
                    spots.add(new Node.Spot(at.getLineNr(), at.getColumnNr()));
                }
            }
        }
        return spots;
    }

    @Test
    void aNameThatStandsTwiceIsFoundWhereItDoes() {
        assertThatThrownBy(() -> Json.read("{\n  \"a\": {\"b\": 1,\n \"b\" : 2}}"))
                .hasMessageContaining("Line 3, column 5: the field “b” is there twice");
    }
}
