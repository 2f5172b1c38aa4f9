"""What a tagged PDF says part by part, by its structure tree (ISO 32000-1, 14.7 and 14.8) and nothing of `shoplib`."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from pypdf import PageObject, PdfReader
from pypdf.generic import ArrayObject, DictionaryObject

ARTIFACT = -1
"""Stands for a mark of what is no part of the document: header and footer, and what stands across a page."""

_TOKEN = re.compile(
    rb"(?P<tag>/\w+)\s*(?:(?P<about><<)|\s(?P<bare>BMC))|(?P<ends>\bEMC\b)|(?P<font>/\w+)\s+[\d.]+\s+Tf\b"
    rb"|(?P<literal>\()|<(?P<hex>[0-9A-Fa-f]+)>|\bT[Jj]\b",
)
_IN_DICTIONARY = re.compile(rb"\(|<<|>>|<[0-9A-Fa-f]*>")
_IN_STRING = re.compile(rb"\\.|[()]", re.DOTALL)
_MARK = re.compile(rb"/MCID (\d+)")
_ESCAPE = re.compile(rb"\\([0-7]{1,3}|.)", re.DOTALL)
_LETTERS = {b"n": b"\n", b"r": b"\r", b"t": b"\t", b"b": b"\b", b"f": b"\f"}

_BLOCK = re.compile(rb"begin(bfchar|bfrange)(.*?)end\1", re.DOTALL)
_CODE = re.compile(rb"<([0-9A-Fa-f]+)>")


@dataclass(frozen=True)
class Part:
    """A heading (`H1`), a table, a paragraph: its tag, the words of it, and of a table its rows, cell by cell.

    `page` is the number of the page on which it begins, from 1.
    """

    tag: str
    text: str
    page: int
    rows: tuple[tuple[str, ...], ...] = ()
    alt: str = ""


class Tagged:
    """Reads a tagged PDF."""

    def __init__(self, reader: PdfReader) -> None:
        self.reader = reader
        self.root = reader.trailer["/Root"]["/StructTreeRoot"]
        self.numbers = {page.indirect_reference.idnum: number for number, page in enumerate(reader.pages, start=1)}
        self.words: dict[int, dict[int, str]] = {}
        self.begins = {item.title: reader.get_destination_page_number(item) + 1
                       for item in reader.outline if not isinstance(item, list)}
        """The page on which each part of the document begins, by its bookmark."""

    def under(self, title: str) -> list[Part]:
        """What stands from this bookmark, a heading, to the next, in the order in which it is read."""
        first = self.begins[title]
        end = min((page for page in self.begins.values() if page > first), default=len(self.reader.pages))
        parts = list(self._parts(self.root, range(first, end + 1)))
        heads = [n for n, part in enumerate(parts) if part.tag == "H1"]
        at = next(n for n in heads if parts[n].text == " ".join(title.split()))
        return parts[at:min((n for n in heads if n > at), default=len(parts))]

    def stamps(self) -> list[str]:
        """Of each page what is no part of the document: header, footer, what stands across it."""
        return [" ".join(self._words(number).get(ARTIFACT, "").split()) for number in self.numbers.values()]

    def pictures(self) -> list[str]:
        """The alternative texts of all pictures, empty where one has none."""
        return [str(node.get("/Alt", "")) for node in self._all(self.root, ("Figure",))]

    def _parts(self, node: DictionaryObject, pages: range) -> Iterator[Part]:
        for kid in _kids(node):
            if not self._is_element(kid):
                continue
            tag = str(kid["/S"]).removeprefix("/")
            if self._page(kid) not in pages and tag != "Document":
                continue
            if tag == "Table":
                rows = tuple(tuple(self._text(cell) for cell in self._all(row, ("TD", "TH")))
                             for row in self._all(kid, ("TR",)))
                yield Part(tag, "", self._page(kid), rows)
            elif tag == "Figure":
                yield Part(tag, self._text(kid), self._page(kid), alt=str(kid.get("/Alt", "")))
            elif tag.startswith("H") or not any(self._is_element(each) for each in _kids(kid)):
                yield Part(tag, self._text(kid), self._page(kid))
            else:
                yield from self._parts(kid, pages)

    def _is_element(self, kid: object) -> bool:
        return isinstance(kid, DictionaryObject) and "/S" in kid

    def _all(self, node: DictionaryObject, tags: tuple[str, ...]) -> Iterator[DictionaryObject]:
        for kid in _kids(node):
            if self._is_element(kid):
                if str(kid["/S"]).removeprefix("/") in tags:
                    yield kid
                else:
                    yield from self._all(kid, tags)

    def _marks(self, node: DictionaryObject, page: int = 0) -> Iterator[tuple[int, int]]:
        """Page and mark of all content under a node."""
        page = self._own_page(node) or page
        for kid in _kids(node):
            if isinstance(kid, int):
                yield page, int(kid)
            elif isinstance(kid, DictionaryObject) and kid.get("/Type") == "/MCR":
                yield self._own_page(kid) or page, int(kid["/MCID"])
            elif isinstance(kid, DictionaryObject) and "/S" in kid:
                yield from self._marks(kid, page)

    def _own_page(self, node: DictionaryObject) -> int:
        return self.numbers[node.raw_get("/Pg").idnum] if "/Pg" in node else 0

    def _page(self, node: DictionaryObject) -> int:
        return next((page for page, _ in self._marks(node)), 0)

    def _text(self, node: DictionaryObject) -> str:
        said = " ".join(self._words(page).get(mark, "") for page, mark in self._marks(node))
        return " ".join(said.split())

    def _words(self, page: int) -> dict[int, str]:
        if page not in self.words:
            self.words[page] = _marked(self.reader.pages[page - 1])
        return self.words[page]


def _kids(node: DictionaryObject) -> list:
    kids = node.get("/K", [])
    kids = kids.get_object()
    return [kid.get_object() for kid in kids] if isinstance(kids, ArrayObject) else [kids]


def _marked(page: PageObject) -> dict[int, str]:
    """The words of a page by the number of their mark, line by line with a space between.

    What is an artifact (header, footer, what stands across the page) has the number `ARTIFACT`. Only the operators of
    text and marks are looked for, for a general reader takes seconds over the paths of a drawing.
    """
    fonts = {name.encode(): unicode_of(font.get_object()) for name, font in page["/Resources"].get("/Font", {}).items()}
    found: dict[int, str] = {}
    open_marks: list[int | None] = []
    font: dict[int, str] = {}
    shown = b""
    content, at = page.get_contents().get_data(), 0
    while token := _TOKEN.search(content, at):
        at = token.end()
        if token["bare"]:
            open_marks.append(ARTIFACT if token["tag"] == b"/Artifact" else None)
        elif token["about"]:
            end = _dictionary(content, at)
            numbered = _MARK.search(content, at, end)
            artifact = token["tag"] == b"/Artifact"
            if content[end:end + 9].lstrip()[:3] == b"BDC":
                open_marks.append(ARTIFACT if artifact else int(numbered[1]) if numbered else None)
            at = end
        elif token["ends"]:
            open_marks.pop()
        elif token["font"]:
            font = fonts[token["font"]]
        elif token["literal"]:
            end = _closing(content, at)
            shown += _ESCAPE.sub(_unescaped, content[at:end])
            at = end + 1
        elif token["hex"]:
            shown += bytes.fromhex(token["hex"].decode())
        else:
            mark = next((mark for mark in reversed(open_marks) if mark is not None), None)
            text = "".join(font[int.from_bytes(shown[k:k + 2])] for k in range(0, len(shown), 2))
            if mark is not None:
                found[mark] = f"{found[mark]} {text}" if mark in found else text
            shown = b""
    return found


def _dictionary(content: bytes, at: int) -> int:
    """Where a dictionary ends whose brackets opened before `at`."""
    depth = 1
    while depth:
        found = _IN_DICTIONARY.search(content, at)
        depth += {b"<<": 1, b">>": -1}.get(found[0], 0)
        at = _closing(content, found.end()) + 1 if found[0] == b"(" else found.end()
    return at


def _closing(content: bytes, at: int) -> int:
    """Where a literal string ends that begins at `at`: it may hold pairs of brackets."""
    depth = 1
    while depth:
        found = _IN_STRING.search(content, at)
        at = found.end()
        depth += {b"(": 1, b")": -1}.get(found[0], 0)
    return at - 1


def _unescaped(escape: re.Match[bytes]) -> bytes:
    """One escape of a literal string (ISO 32000-1, 7.3.4.2)."""
    after = escape[1]
    return bytes([int(after, 8)]) if after.isdigit() else _LETTERS.get(after, after)


def unicode_of(font: DictionaryObject) -> dict[int, str]:
    """What the two-byte codes of a font stand for, by its ToUnicode table (ISO 32000-1, 9.10.3)."""
    table: dict[int, str] = {}
    for kind, body in _BLOCK.findall(font["/ToUnicode"].get_data()):
        codes = [bytes.fromhex(code.decode()) for code in _CODE.findall(body)]
        if kind == b"bfchar":
            for code, text in zip(codes[::2], codes[1::2], strict=True):
                table[int.from_bytes(code)] = text.decode("utf-16-be")
        else:
            for low, high, text in zip(codes[::3], codes[1::3], codes[2::3], strict=True):
                first = int.from_bytes(low)
                for code in range(first, int.from_bytes(high) + 1):
                    table[code] = (int.from_bytes(text) + code - first).to_bytes(len(text)).decode("utf-16-be")
    return table
