#!/usr/bin/env python3
"""Writes the first inputs of each fuzz target: from the samples, from pages of the tests, and from installed fonts.

usage: seeds.py SOURCE INTO [TENTER-CLI]
"""
import json
import pathlib
import re
import subprocess
import sys

source, into = map(pathlib.Path, sys.argv[1:3])
cli = sys.argv[3] if len(sys.argv) > 3 else None

# The letters of the text that the target `font` shapes.
letters = 'Low tide at 7.40: fine Wa-ter AV\u00ad\u05d0\u05d1\u0645\u062f'
fonts = ['Karla', 'Vollkorn', 'Inter Variable', 'Amiri', 'Lato']


def seed(target, name, content):
    folder = into / target
    folder.mkdir(parents=True, exist_ok=True)
    (folder / name).write_bytes(content if isinstance(content, bytes) else content.encode())


def words(node, found):
    """The keys and the enumerated words of a JSON schema."""
    if isinstance(node, dict):
        found.update(node.get('properties', {}))
        found.update(word for word in node.get('enum', []) if isinstance(word, str))
        node = list(node.values())
    if isinstance(node, list):
        for each in node:
            words(each, found)


def font_seeds():
    from fontTools import subset
    from fontTools.ttLib import TTFont
    for family in fonts:
        found = subprocess.run(['fc-match', '-f', '%{file}|%{index}', family], capture_output=True, text=True,
                               check=True).stdout
        file, index = found.split('|')
        font = TTFont(file, fontNumber=int(index) & 0xFFFF)
        # Hints take the most bytes and are never read.
        cutter = subset.Subsetter(subset.Options(hinting=False, layout_features=['*']))
        cutter.populate(text=letters)
        cutter.subset(font)
        path = into / 'font' / (family.replace(' ', '-') + '.ttf')
        path.parent.mkdir(parents=True, exist_ok=True)
        font.save(path)
        if family in ('Karla', 'Lato'):
            font.flavor = 'woff'
            font.save(path.with_suffix('.woff'))
            subprocess.run(['woff2_compress', path], capture_output=True, check=True)


for project in sorted(source.glob('sample-projects/*.tenter.json')) + sorted(source.glob('tests/project/*.tenter.json')):
    seed('project', project.name, project.read_bytes())
    seed('layout', project.name, project.read_bytes()[:2000])
    seed('shaping', project.name, project.read_bytes()[-2000:])
found = set()
words(json.loads((source / 'resources/project.schema.json').read_text()), found)
seed('.', 'project.dict', ''.join(f'"\\"{word}\\""\n' for word in sorted(found) if re.fullmatch(r'[\w -]+', word)))

for page in sorted(source.glob('tests/start/pages/*.html')) + sorted(source.glob('tests/engines/themes/*.html')):
    text = page.read_text()
    seed('page', page.name, text)
    seed('pasted', page.name, '\x03' + text[:4000])
    for number, css in enumerate(re.findall(r'<style[^>]*>(.*?)</style>', text, re.S)):
        seed('css', f'{page.stem}-{number}.css', css)
        for selector in re.findall(r'([^{}@;]+)\{', css)[:20]:
            seed('selectors', f'{page.stem}-{number}-{abs(hash(selector))}', selector.strip())
seed('css', 'calculations', 'calc(1px + 2vw * 3 - min(1rem, 2em, 50%) / clamp(1, 2, 3))')
seed('css', 'condition', 'screen and (min-width: 40em) or (not (width <= 700px)), print')
seed('selectors', 'many', 'a:not(.b, :has(> .c)) > [d^="e" i] + f:nth-child(2n+1 of .g) ~ :is(h, :where(#i))::before')
seed('audience', 'visits.csv', (source / 'sample-projects/visits.csv').read_bytes())
seed('audience', 'quoted', 'Screen resolution;"Sessions"\n390x844;"1.200"\n"768px";5\n')
seed('pasted', 'markdown', '\x02# Walks\n\n## Low tide\nA **short** [walk](#x).\n\n## Dusk\nBats.\n')
seed('pasted', 'table', '\x04Heading,Text,Button\nLow tide,"A, b",Book\nDusk,Bats,Book\n')
seed('pasted', 'plain', '\x01Low tide\nA short walk.\nBook https://a.example\n\nDusk\nBats.\n')
for project in sorted(source.glob('sample-projects/*.tenter.json')) if cli else []:
    for verb in ['stylesheet', 'page']:
        printed = subprocess.run([cli, verb, project], capture_output=True, text=True, check=True).stdout
        # Fonts and pictures take the most bytes and are not read.
        seed('intake', project.stem + '.' + verb, re.sub(r'@font-face\s*{[^}]*}|data:[^"\')]*', '', printed))
seed('intake', 'size', 'font-size: clamp(1.125rem, 0.75rem + 1.2vw, 2rem)')
font_seeds()
