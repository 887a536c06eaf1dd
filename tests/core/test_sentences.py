"""Sentences of the model: nested, in English by themselves, and whole where they are written."""

from __future__ import annotations

import pickle

import pytest

from core.rules.words import band, listed, mains_words, pin_list
from core.sentences import Sentence, Text, sentence


def test_a_sentence_in_a_sentence_reads_as_one() -> None:
    inner = sentence("pins {pins}", pins=sentence("{items} and {last}", items="4", last=5))
    whole = sentence("Wire {pins} of {id}.", pins=inner, id="V1")
    assert str(whole) == "Wire pins 4 and 5 of V1."
    assert f"{whole}" == str(whole)
    assert dict(whole.values)["pins"] is inner


def test_values_that_are_no_sentences_are_text_at_once() -> None:
    assert sentence("{count} of {share}", count=3, share=0.5).values == (("count", "3"), ("share", "0.5"))


def test_braces_in_what_a_user_wrote_stay_as_they_are() -> None:
    assert str(sentence("'{type}' is unknown", type="{id} {0}")) == "'{id} {0}' is unknown"


def test_sentences_are_values() -> None:
    one = sentence("{a} of {b}", a="V1", b=sentence("this part"))
    assert one == sentence("{a} of {b}", a="V1", b=sentence("this part")) and hash(one) == hash(one)
    assert pickle.loads(pickle.dumps(one)) == one


@pytest.mark.parametrize(
    ("items", "text"),
    [
        ((), ""),
        (("V1",), "V1"),
        (("V1", "V2"), "V1 and V2"),
        (("V1", "V2", "V3", "V4", "V5"), "V1, V2, V3, V4 and V5"),
        (("V1", "V2", "V3", "V4", "V5", "V6"), "V1, V2, V3, V4 and 2 more"),
        ((sentence("pin {pin}", pin=4), sentence("pin {pin}", pin=5), "V1"), "pin 4, pin 5 and V1"),
    ],
)
def test_things_in_a_row(items: tuple[Text, ...], text: str) -> None:
    assert str(listed(items)) == text


def test_words_in_values_are_sentences_so_that_they_can_be_translated() -> None:
    assert isinstance(pin_list(("4", "5")), Sentence) and str(pin_list(("4", "5"))) == "pins 4 and 5"
    assert isinstance(mains_words("nominal"), Sentence) and str(mains_words("low mains")) == "low mains"
    assert isinstance(band(-5, 10), Sentence)
    assert band(-10, 10) == "±10\u2009%"
